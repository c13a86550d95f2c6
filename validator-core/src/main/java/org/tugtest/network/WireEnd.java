package org.tugtest.network;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;

/**
 * One end of a wire. Two are equal when they are the same end of the wire of the same id.
 *
 * @param from whether it is the end written as {@code from}
 */
public record WireEnd(Wire wire, boolean from) {
  /** What the file names there; null when it names nothing. */
  public @Nullable Ref ref() {
    return from ? wire.from() : wire.to();
  }

  /** The field it is written in. */
  public String field() {
    return from ? "from" : "to";
  }

  /** The terminal written for this end, for device pins; null: none written. */
  public @Nullable String terminal() {
    return from ? wire.fromTerminal() : wire.toTerminal();
  }

  /** The other end of the same wire. */
  public WireEnd other() {
    return new WireEnd(wire, !from);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WireEnd that && from == that.from && wire.id().equals(that.wire.id());
  }

  @Override
  public int hashCode() {
    return Objects.hash(wire.id(), from);
  }
}
