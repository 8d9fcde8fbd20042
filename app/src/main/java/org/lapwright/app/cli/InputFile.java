package org.lapwright.app.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Opens a file that a command was given, and says in a sentence why it cannot. */
final class InputFile {
    private static final long LONGEST = 4_000_000;

    private InputFile() {}

    /** Reads what is in a file. */
    @FunctionalInterface
    interface Reader<T> {
        T read(Path path) throws IOException;
    }

    /**
     * Reads a file by its name.
     *
     * @param file its name
     * @param holds what it should hold, such as {@code lap times}
     * @throws BadInput if it cannot be opened or read
     */
    static <T> T read(String file, String holds, Reader<T> reader) {
        try {
            if (file.isBlank()) {
                throw new BadInput("A file name is empty; it should name a file with " + holds + ".");
            }
            Path path = Path.of(file);
            if (Files.isDirectory(path)) {
                throw new BadInput(file + " is a folder; it should be a file with " + holds + ".");
            }
            return reader.read(path);
        } catch (NoSuchFileException missing) {
            throw new BadInput(file + ": there is no such file.");
        } catch (AccessDeniedException closed) {
            throw new BadInput(file + " cannot be read: you are not allowed to open it.");
        } catch (InvalidPathException strange) {
            throw new BadInput("'" + file + "' cannot be a file name.");
        } catch (CharacterCodingException notText) {
            throw new BadInput(file + " is not a text in UTF-8; it should be a file with " + holds + ".");
        } catch (IOException failed) {
            throw new BadInput(LapSource.named(file) + " cannot be read: " + failed.getMessage() + ".");
        }
    }

    /**
     * The text of a file; {@code -} is standard input.
     *
     * @throws BadInput if it cannot be read, or is far too long to be what it should be
     */
    static String text(String file, String holds) {
        if (file.equals("-")) {
            return read("standard input", holds, path -> decoded(System.in.readNBytes((int) LONGEST + 1), holds));
        }
        return read(file, holds, path -> {
            if (Files.size(path) > LONGEST) {
                throw new BadInput(file + " is longer than 4 MB; it should be a file with " + holds + ".");
            }
            return decoded(Files.readAllBytes(path), holds);
        });
    }

    private static String decoded(byte[] bytes, String holds) throws CharacterCodingException {
        if (bytes.length > LONGEST) {
            throw new BadInput("Standard input is longer than 4 MB; it should be " + holds + ".");
        }
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(java.nio.ByteBuffer.wrap(bytes))
                .toString();
    }
}
