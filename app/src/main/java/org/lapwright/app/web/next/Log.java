package org.lapwright.app.web.next;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.units.Reading;

/** Where a change is logged: the form of its kind, filled in. */
final class Log {
    private static final int DECIMALS = 4;

    private Log() {}

    static String address(String car, String track, Change change) {
        StringBuilder address = new StringBuilder("/bench/change?name=")
                .append(BenchPage.encoded(car))
                .append("&kind=")
                .append(change.kind().code())
                .append("&track=")
                .append(BenchPage.encoded(track));
        change.values().numbers().forEach((key, reading) -> add(address, key, number(reading)));
        change.values().texts().forEach((key, text) -> add(address, key, text));
        return address.toString();
    }

    private static void add(StringBuilder address, String key, String value) {
        address.append('&').append(key).append('=').append(BenchPage.encoded(value));
    }

    private static String number(Reading reading) {
        return new BigDecimal(reading.value())
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
