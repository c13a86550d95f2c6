package org.tugtest.bench.rework;

import java.util.Optional;
import org.tugtest.network.WireEnd;
import org.tugtest.text.NaturalOrder;

/**
 * One end of a wire on the bench.
 *
 * @param first the end that is {@code from} as the wire is, or as it comes when it is new
 */
public record PieceEnd(Piece piece, boolean first) implements Comparable<PieceEnd> {

  /** The end as it is; empty for a new wire. */
  public Optional<WireEnd> now() {
    return Optional.ofNullable(piece.now()).map(wire -> new WireEnd(wire, first));
  }

  /** The end as it will be; empty for a wire that is taken out. */
  public Optional<WireEnd> target() {
    return Optional.ofNullable(piece.target())
        .map(wire -> new WireEnd(wire, first != piece.turned()));
  }

  /** The other end of the same wire. */
  PieceEnd other() {
    return new PieceEnd(piece, !first);
  }

  @Override
  public int compareTo(PieceEnd other) {
    int byName = NaturalOrder.NATURAL.compare(piece.name(), other.piece.name());
    return byName != 0 ? byName : Boolean.compare(other.first, first);
  }

  @Override
  public String toString() {
    return piece.name() + (first ? "/a" : "/b");
  }
}
