package org.tugtest.compare.circuit;

import java.util.List;
import org.tugtest.model.Word;

/**
 * One net that is not what it was. Pins before are called as before, pins after as after.
 *
 * @param before the pins of each net before that this is about; empty when there was none
 * @param after the pins of each net after that this is about; empty when there is none
 * @param pins the pins that came to a net or went from it, as the side that has them calls them
 * @param wires ids of the wires that make the difference: of those that went when pins were lost,
 *     of those that came when pins were gained
 * @param contacts plugged or bolted contacts that make the difference, as {@code X1:3-LAMP:3}
 * @param sentence all of it in words
 */
public record NetChange(
    Kind kind,
    List<List<String>> before,
    List<List<String>> after,
    List<String> pins,
    List<String> wires,
    List<String> contacts,
    String sentence) {

  /** What became of it. */
  public enum Kind implements Word {
    /** One net has become several. */
    SPLIT,
    /** Several nets have become one. */
    MERGED,
    /** Pins went from a net, or a net is no more. */
    LOST,
    /** Pins came to a net, or a net came about. */
    GAINED
  }

  public NetChange {
    before = before.stream().map(List::copyOf).toList();
    after = after.stream().map(List::copyOf).toList();
    pins = List.copyOf(pins);
    wires = List.copyOf(wires);
    contacts = List.copyOf(contacts);
  }
}
