package org.tugtest.write;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * The characters of a file that a spreadsheet program wrote.
 *
 * @param text without byte-order mark; empty when it was refused
 * @param encoding name of the encoding it was read in
 * @param assumed whether nothing in the file says that it is this encoding
 * @param refused why it is no text; null when it is
 */
record SheetText(String text, String encoding, boolean assumed, @Nullable String refused) {
  static final Charset WINDOWS = Charset.forName("windows-1252");

  /**
   * Decodes by the byte-order mark; without one as UTF-8 where that fits, else as Windows-1252,
   * which fits anything and is therefore an assumption.
   */
  static SheetText decode(byte[] bytes) {
    if (startsWith(bytes, 'P', 'K', 3, 4)) {
      return refused("is a spreadsheet file, not CSV; save it as CSV first");
    }
    if (startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
      return refused("is a spreadsheet file of an old kind, not CSV; save it as CSV first");
    }
    if (startsWith(bytes, 0xFF, 0xFE)) {
      return read(bytes, 2, StandardCharsets.UTF_16LE, "UTF-16");
    }
    if (startsWith(bytes, 0xFE, 0xFF)) {
      return read(bytes, 2, StandardCharsets.UTF_16BE, "UTF-16");
    }
    if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
      return read(bytes, 3, StandardCharsets.UTF_8, "UTF-8");
    }
    SheetText utf8 = read(bytes, 0, StandardCharsets.UTF_8, "UTF-8");
    return utf8.refused() == null || holdsZero(bytes)
        ? utf8
        : new SheetText(new String(bytes, WINDOWS), "Windows-1252", true, null);
  }

  private static SheetText read(byte[] bytes, int from, Charset charset, String name) {
    try {
      String text =
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
              .toString();
      return text.indexOf('\0') >= 0
          ? refused("holds zero characters, so it is no text; save it as CSV in UTF-8")
          : new SheetText(text, name, false, null);
    } catch (CharacterCodingException e) {
      return refused("is not the " + name + " that its first bytes announce; save it as UTF-8");
    }
  }

  private static boolean holdsZero(byte[] bytes) {
    for (byte b : bytes) {
      if (b == 0) {
        return true;
      }
    }
    return false;
  }

  private static boolean startsWith(byte[] bytes, int... first) {
    if (bytes.length < first.length) {
      return false;
    }
    for (int i = 0; i < first.length; i++) {
      if ((bytes[i] & 0xFF) != first[i]) {
        return false;
      }
    }
    return true;
  }

  private static SheetText refused(String why) {
    return new SheetText("", "", false, why);
  }
}
