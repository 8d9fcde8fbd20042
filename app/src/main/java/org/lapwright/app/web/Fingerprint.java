package org.lapwright.app.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 in hexadecimal: tells whether two things are the same without keeping both. */
final class Fingerprint {
    private Fingerprint() {}

    static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** Of records, whose text holds all their values. */
    static String of(Object... values) {
        StringBuilder text = new StringBuilder();
        for (Object value : values) {
            text.append(value).append('\n');
        }
        return of(text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
