package org.lapwright.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapwright.app.usecase.Glossary.Word;

class GlossaryTest {
    private static final Glossary GLOSSARY = new Glossary();

    static List<Word> words() {
        return GLOSSARY.words();
    }

    @ParameterizedTest
    @MethodSource("words")
    void everyWordIsExplainedInAtMostTwentyFive(Word word) {
        assertThat(word.text().split("\\s+")).hasSizeLessThanOrEqualTo(25);
        assertThat(word.text()).endsWith(".");
        assertThat(word.slug()).matches("[a-z]+(-[a-z]+)*");
    }

    @ParameterizedTest
    @MethodSource("words")
    void everyOtherWordToSeeIsThere(Word word) {
        assertThat(word.see())
                .allSatisfy(other -> assertThat(GLOSSARY.find(other)).isPresent());
        assertThat(word.see()).doesNotContain(word.term());
    }

    @Test
    void noWordStandsTwice() {
        assertThat(GLOSSARY.words()).extracting(Word::slug).doesNotHaveDuplicates();
        assertThat(GLOSSARY.words()).extracting(Word::term).isSorted();
    }

    @Test
    void theWordsOfTheTradeAndOurOwnAreThere() {
        assertThat(GLOSSARY.words())
                .extracting(Word::term)
                .contains(
                        "guide",
                        "braid",
                        "shim",
                        "trued",
                        "ballast",
                        "deslot",
                        "lane",
                        "pinion",
                        "body float",
                        "downforce",
                        "gear mesh",
                        "run",
                        "lap",
                        "pass",
                        "pace",
                        "spread",
                        "verdict",
                        "ladder",
                        "shelf",
                        "sheet",
                        "baseline",
                        "set-up",
                        "change",
                        "missed gate",
                        "double trigger",
                        "drift",
                        "interval");
    }

    @ParameterizedTest
    @CsvSource({"Body Float, body float", "body-float, body float", "' BRAID ', braid", "body_float, body float"})
    void aWordIsFoundHoweverItIsWritten(String typed, String term) {
        assertThat(GLOSSARY.find(typed)).map(Word::term).hasValue(term);
    }

    @ParameterizedTest
    @CsvSource({"braad, braid", "pinoin, pinion", "desslot, deslot", "shims, shim", "gear mash, gear mesh"})
    void aSlipOfThePenFindsTheNearest(String typed, String term) {
        assertThat(GLOSSARY.find(typed)).isEmpty();
        assertThat(GLOSSARY.nearest(typed)).map(Word::term).hasValue(term);
    }

    @ParameterizedTest
    @CsvSource({"xylophone", "q", "''"})
    void whatIsLikeNothingFindsNothing(String typed) {
        assertThat(GLOSSARY.nearest(typed)).isEmpty();
    }

    @Test
    void aVeryLongWordDoesNotTakeLong() {
        assertThat(GLOSSARY.nearest("a".repeat(1_000_000))).isEmpty();
    }
}
