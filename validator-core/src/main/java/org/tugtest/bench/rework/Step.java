package org.tugtest.bench.rework;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing to do, to be ticked off.
 *
 * @param kind what is done
 * @param at id of the connector, device, splice or wire where it is done
 * @param ends the wire ends it is done to
 * @param from the seat that is emptied
 * @param to the seat that is filled
 * @param part terminal, splice or housing part; null when it is not known
 * @param text one sentence without a full stop
 * @param remarks what to look out for
 */
public record Step(
    Kind kind,
    String at,
    List<PieceEnd> ends,
    @Nullable Seat from,
    @Nullable Seat to,
    @Nullable String part,
    String text,
    List<String> remarks) {
  public Step {
    ends = List.copyOf(ends);
    remarks = List.copyOf(remarks);
  }

  /** What is done. */
  public enum Kind {
    /** A plug is parted and its secondary lock opened. */
    OPEN,
    /** A housing that was not there is taken to hand. */
    FIT,
    /** A blank is taken out of a cavity. */
    UNBLANK,
    /** A terminal is taken out of its cavity. */
    RELEASE,
    /** A terminal is taken off a stud or blade. */
    DETACH,
    /** A terminal is cut off, or an end is cut out of a splice. */
    CUT,
    /** A wire is drawn out of the loom. */
    REMOVE,
    /** A new wire is cut to length and laid in, or laid in and cut in place. */
    ADD,
    /** What cannot pass a terminal is slid on. */
    SLIDE_ON,
    /** A terminal is crimped on. */
    CRIMP,
    /** A terminal waits elsewhere until its cavity is free. */
    PARK,
    /** A terminal is put into its cavity. */
    INSERT,
    /** A terminal is put on a stud or blade. */
    ATTACH,
    /** Ends are joined in a splice. */
    SPLICE,
    /** A cavity is plugged. */
    BLANK,
    /** A secondary lock is closed. */
    CLOSE,
    /** An empty housing is taken away. */
    TAKE_AWAY,
    /** A label is put on. */
    LABEL
  }
}
