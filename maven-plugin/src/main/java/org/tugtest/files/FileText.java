package org.tugtest.files;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** From the bytes of a file to its text, and back. */
public final class FileText {
  private FileText() {}

  /** The text of these bytes, a byte-order mark included; empty when they are not UTF-8. */
  public static Optional<String> decode(byte[] bytes) {
    try {
      return Optional.of(
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString());
    } catch (CharacterCodingException notText) {
      return Optional.empty();
    }
  }

  /** The bytes of a text. */
  public static byte[] encode(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
