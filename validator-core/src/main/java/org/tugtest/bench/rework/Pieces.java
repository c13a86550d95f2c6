package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;

/** The wires on the bench: which stay, which are taken out, which come new. */
final class Pieces {
  private final Facts now;
  private final Facts target;
  private final Matching matching;

  private Pieces(Facts now, Facts target, Matching matching) {
    this.now = now;
    this.target = target;
    this.matching = matching;
  }

  /** All pieces in the order of the wires, those that come new last. */
  static List<Piece> of(Facts now, Facts target, Matching matching) {
    return new Pieces(now, target, matching).all();
  }

  private List<Piece> all() {
    Map<String, Wire> wanted = target.harness().wires();
    List<Piece> pieces = new ArrayList<>();
    Set<String> kept = new HashSet<>();
    for (Wire wire : now.harness().wires().values()) {
      String id = matching.wires().get(wire.id());
      Wire becomes = id == null ? null : wanted.get(id);
      if (becomes != null && isSameStuff(wire, becomes) && kept.add(becomes.id())) {
        pieces.add(new Piece(becomes.id(), wire, becomes, isTurned(wire, becomes)));
      } else {
        String name = wanted.containsKey(wire.id()) ? wire.id() + " (old)" : wire.id();
        pieces.add(new Piece(name, wire, null, false));
      }
    }
    for (Wire wire : wanted.values()) {
      if (!kept.contains(wire.id())) {
        pieces.add(new Piece(wire.id(), null, wire, false));
      }
    }
    return pieces;
  }

  /** A wire changes neither its conductor, nor its insulation, nor its colour. */
  private boolean isSameStuff(Wire one, Wire other) {
    if (one.colour() != null && other.colour() != null && !one.colour().equals(other.colour())) {
      return false;
    }
    Optional<Double> area = now.fitting().sizes().areaMm2(one).map(a -> a.value());
    Optional<Double> wanted = target.fitting().sizes().areaMm2(other).map(a -> a.value());
    if (area.isPresent() && wanted.isPresent() && !area.equals(wanted)) {
      return false;
    }
    WirePart part = part(now, one);
    WirePart becomes = part(target, other);
    return part == null
        || becomes == null
        || (part.wall() == becomes.wall() && Objects.equals(part.maxC(), becomes.maxC()));
  }

  private static @Nullable WirePart part(Facts facts, Wire wire) {
    return wire.part() == null ? null : facts.harness().parts().wires().get(wire.part());
  }

  /** Whether more ends stay where they are when the ends are exchanged. */
  private boolean isTurned(Wire wire, Wire becomes) {
    return stays(wire.from(), becomes.to()) + stays(wire.to(), becomes.from())
        > stays(wire.from(), becomes.from()) + stays(wire.to(), becomes.to());
  }

  /** 3: in the same seat; 1: in the same connector; else 0. */
  private int stays(@Nullable Ref is, @Nullable Ref becomes) {
    if (is == null || becomes == null) {
      return 0;
    }
    String owner = matching.connectors().getOrDefault(is.owner(), is.owner());
    owner = matching.splices().getOrDefault(owner, owner);
    if (!owner.equals(becomes.owner())) {
      return 0;
    }
    return Objects.equals(is.pin(), becomes.pin()) ? 3 : 1;
  }
}
