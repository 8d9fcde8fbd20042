package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class VerdictJsonTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Keys are as in the verdict command's JSON where that has them. */
    @Test
    void everythingShownIsThere() throws JsonProcessingException {
        String stintBefore = "{'clean_laps':2,'pace_s':6.5,'spread_s':null,'mad_s':null,'best_s':6.5,'held_s':null,"
                + "'held_interval_s':null,'drift_s_per_lap':null,'autocorrelation':null,'effective_laps':null,"
                + "'time_per_lap_s':null}";
        String stintAfter = stintBefore.replace("6.5", "6.4").replace("'clean_laps':2", "'clean_laps':1");
        String expected = "{'verdict':'faster','difference_s':-0.1,'interval_s':[null,0.25],'difference_share':-0.015,"
                + "'interval_share':[-0.02,-0.01],'confidence':0.95,'steadiness':'steadier','spread_ratio':0.8,"
                + "'spread_interval':null,'offs':{'before':{'offs':1,'laps':30,'interval':[0.01,0.17]},"
                + "'after':{'offs':0,'laps':30,'interval':[0.0,0.11]},'fisher_p':1.0},'laps_needed':0,"
                + "'laps_needed_for_margin':null,'decided_at_lap':23,'before':" + stintBefore + ",'after':" + stintAfter
                + ",'runs':[{'side':'before','kinds':['clean','clean'],'stint':" + stintBefore
                + "},{'side':'after','kinds':['clean'],'stint':" + stintAfter + "}],"
                + "'working':{'autocorrelation':0.3,'run_share':0.1,'lap_scatter':0.01,'drift_share':0.002,"
                + "'warm_up_share':0.004,'plan':'AB x 3','alpha':0.05,'level_margin':0.003,"
                + "'looks':[{'lap':10,'delta':-0.01,'half_width':null}]},'caveats':['ONE_RUN_A_SIDE','PLAN_AS_DRIVEN']}";
        assertThat(JSON.readTree(VerdictJson.write(Sample.full())))
                .isEqualTo(JSON.readTree(expected.replace('\'', '"')));
    }

    @Test
    void aVerdictOnNothingIsShort() throws JsonProcessingException {
        assertThat(JSON.readTree(VerdictJson.write(Sample.TOO_FEW)).fieldNames())
                .toIterable()
                .containsExactly(
                        "verdict",
                        "laps_needed",
                        "laps_needed_for_margin",
                        "decided_at_lap",
                        "before",
                        "after",
                        "runs",
                        "caveats");
    }
}
