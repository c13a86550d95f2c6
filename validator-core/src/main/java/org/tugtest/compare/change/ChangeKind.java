package org.tugtest.compare.change;

import org.tugtest.model.Word;

/** The sort of a change. What it was made to, the section of its subject tells. */
public enum ChangeKind implements Word {
  /** What holds in a state is set otherwise, or a state came or went. */
  STATE,
  /** A rule's level or limit is set otherwise. */
  LIMIT,
  /** A finding is accepted, no longer accepted, or accepted on other terms. */
  WAIVER,
  /** The team expects something else. */
  EXPECTATION,
  /** A wire end sits on another contact. */
  RE_PINNED,
  /** A wire takes another way. */
  RE_ROUTED,
  /** A wire has another conductor area. */
  RE_GAUGED,
  /** A wire has another colour. */
  RE_COLOURED,
  /** A wire, or a segment, is longer. */
  LENGTHENED,
  /** A wire, or a segment, is shorter. */
  SHORTENED,
  /** It is new. */
  ADDED,
  /** It is gone. */
  REMOVED,
  /** Another part, housing or type stands in its place. */
  SWAPPED,
  /** It has another id. */
  RENAMED,
  /** Two things have each other's id. */
  IDS_EXCHANGED,
  /** A connector is plugged into something else, or a device is bolted to something else. */
  RE_MATED,
  /** It stands at another place. */
  MOVED,
  /** A fuse has another rating. */
  FUSE_RE_RATED,
  /** Any other field. */
  OTHER;

  /** Whether it changes what is demanded, not what is built. */
  public boolean isPolicy() {
    return this == STATE || this == LIMIT || this == WAIVER || this == EXPECTATION;
  }

  /** The sort of the same change made backwards. */
  public ChangeKind backwards() {
    return switch (this) {
      case LENGTHENED -> SHORTENED;
      case SHORTENED -> LENGTHENED;
      case ADDED -> REMOVED;
      case REMOVED -> ADDED;
      default -> this;
    };
  }
}
