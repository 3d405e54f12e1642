package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.arcwright.format.FormatException;
import org.arcwright.format.Place;
import org.arcwright.format.Problem;

/** A text file of the user's that no reader of the core reads. */
final class InputText {
  private static final int MOST_MEGABYTES = 64;

  private InputText() {}

  /**
   * The file's text.
   *
   * @throws FormatException if there is none, it is too large or it is not in UTF-8
   */
  static String read(Path file) {
    if (Files.isDirectory(file)) {
      throw refuse(file, "directory", "name a file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes((MOST_MEGABYTES << 20) + 1);
      if (bytes.length > MOST_MEGABYTES << 20) {
        throw refuse(file, "file too large", "at most " + MOST_MEGABYTES + " MB are read");
      }
      return UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (NoSuchFileException e) {
      throw refuse(file, "no such file", "check its name and folder");
    } catch (CharacterCodingException e) {
      throw refuse(file, "text that is not UTF-8", "save the file as CSV in UTF-8");
    } catch (IOException e) {
      throw refuse(file, "file that cannot be read", "check its permissions");
    }
  }

  private static FormatException refuse(Path file, String what, String remedy) {
    return new FormatException(
        List.of(new Problem(new Place(file.toString(), 0, 0), what, "", remedy)));
  }
}
