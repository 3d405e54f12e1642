package org.arcwright.format.tree;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Brings a file's text into memory: UTF-8, with or without a byte order mark, of limited size. */
public final class TextFile {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private TextFile() {}

  /**
   * The file's text, or nothing and a fault.
   *
   * @param mostBytes a larger file is not read
   */
  public static Optional<String> read(Path file, int mostBytes, Faults faults) {
    return bytes(file, mostBytes, faults).flatMap(bytes -> decode(bytes, faults));
  }

  /**
   * The file's bytes, or nothing and a fault.
   *
   * @param mostBytes a larger file is not read
   */
  public static Optional<byte[]> bytes(Path file, int mostBytes, Faults faults) {
    if (Files.isDirectory(file)) {
      return refuse(faults, "directory", "name a file");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(mostBytes + 1);
    } catch (NoSuchFileException e) {
      return refuse(faults, "no such file", "check its name and folder");
    } catch (IOException | SecurityException e) {
      return refuse(faults, "file that cannot be read", "check its permissions");
    }
    if (bytes.length > mostBytes) {
      return refuse(faults, "file too large", "at most " + size(mostBytes) + " are read");
    }
    return Optional.of(bytes);
  }

  private static <T> Optional<T> refuse(Faults faults, String what, String remedy) {
    faults.add(0, 0, what, "", remedy);
    return Optional.empty();
  }

  private static String size(int bytes) {
    return bytes >= 1 << 20 ? (bytes >> 20) + " MB" : (bytes >> 10) + " KB";
  }

  /** The bytes as text without its byte order mark, or nothing and a fault. */
  public static Optional<String> decode(byte[] bytes, Faults faults) {
    CharsetDecoder decoder =
        UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer text = CharBuffer.allocate(bytes.length);
    boolean malformed = decoder.decode(ByteBuffer.wrap(bytes), text, true).isError();
    String read = text.flip().toString();
    if (!malformed) {
      return check(read, faults);
    }
    for (byte b : bytes) {
      if (b == 0) {
        return refuse(faults, "binary file", "a text file in UTF-8 is right");
      }
    }
    return stop(
        read, read.length(), "text that is not UTF-8", "", "save the file as UTF-8", faults);
  }

  /**
   * The text without its byte order mark, or nothing and a fault at its first control character.
   */
  public static Optional<String> check(String text, Faults faults) {
    String plain = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    if (plain.indexOf('\0') >= 0) {
      return refuse(faults, "binary file", "a text file in UTF-8 is right");
    }
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (isControl(c)) {
        String name = String.format("U+%04X", (int) c);
        return stop(plain, i, "control character", name, "take it out", faults);
      }
    }
    return Optional.of(plain);
  }

  /** What YAML calls not printable. */
  private static boolean isControl(char c) {
    return (c < ' ' && c != '\n' && c != '\r' && c != '\t')
        || (c >= 0x7F && c <= 0x9F && c != 0x85)
        || c >= 0xFFFE;
  }

  private static Optional<String> stop(
      String text, int at, String what, String value, String remedy, Faults faults) {
    int line = 1;
    int start = 0;
    for (int i = 0; i < at; i++) {
      if (text.charAt(i) == '\n') {
        line++;
        start = i + 1;
      }
    }
    faults.add(line, at - start + 1, what, value, remedy);
    return Optional.empty();
  }
}
