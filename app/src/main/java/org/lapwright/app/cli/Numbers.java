package org.lapwright.app.cli;

import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Numbers on the command line, whatever the locale: {@code 0.3}, and {@code 0,3} as well. */
final class Numbers {
    private static final Pattern NUMBER = Pattern.compile("[+-]?([0-9]{1,9}([.][0-9]{0,9})?|[.][0-9]{1,9})");

    private Numbers() {}

    /** Lets a command and those below it read their numbers so. */
    static void readBy(CommandLine commandLine) {
        // One object for both: Java 17 cannot archive the classes of a program that refers to a method twice alike.
        ITypeConverter<Double> number = Numbers::number;
        ITypeConverter<Integer> wholeNumber = Numbers::wholeNumber;
        commandLine.registerConverter(Double.class, number);
        commandLine.registerConverter(double.class, number);
        commandLine.registerConverter(Integer.class, wholeNumber);
        commandLine.registerConverter(int.class, wholeNumber);
    }

    private static double number(String text) {
        String plain = text.strip().replace(',', '.');
        if (!NUMBER.matcher(plain).matches()) {
            throw new TypeConversionException("'" + text + "' is not a number; write one such as 0.3");
        }
        return Double.parseDouble(plain);
    }

    private static int wholeNumber(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException wrong) {
            throw new TypeConversionException("'" + text + "' is not a whole number; write one such as 8080");
        }
    }
}
