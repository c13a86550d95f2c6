package org.tugtest.bench.rework;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.WireLength;
import org.tugtest.route.Allowance;
import org.tugtest.route.Route;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Quoted;

/**
 * Wires of which no end is moved, and that need another length all the same: a segment is led
 * otherwise, a splice or a connector stands elsewhere, or the wire was built longer or shorter than
 * the loom that is wanted has it.
 */
final class Ways {
  private static final double NEAR_ZERO = 0.5;
  private final Facts now;
  private final Facts target;
  private final Matching matching;
  private final boolean asBuilt;
  private final Map<String, String> told = new TreeMap<>(NaturalOrder.NATURAL);
  private final List<Piece> remade = new ArrayList<>();

  /**
   * The wires that need another length.
   *
   * @param asBuilt whether what is there is a loom as built, of which a wire of the wrong length is
   *     named though its way stays
   */
  Ways(Facts now, Facts target, Matching matching, List<Piece> pieces, Jobs jobs, boolean asBuilt) {
    this.asBuilt = asBuilt;
    this.now = now;
    this.target = target;
    this.matching = matching;
    for (Piece piece : pieces) {
      boolean touched =
          jobs.of(new PieceEnd(piece, true)) != null || jobs.of(new PieceEnd(piece, false)) != null;
      if (piece.kept() && !touched) {
        tell(piece);
      }
    }
  }

  /** The length that is planned, and how much of it is spare. */
  private record Need(double mm, double spareMm) {}

  private void tell(Piece piece) {
    Wire is = Objects.requireNonNull(piece.now());
    Wire becomes = Objects.requireNonNull(piece.target());
    Optional<Need> way = need(now, is, becomes);
    Optional<Need> wanted = need(target, becomes, is);
    Optional<WireLength> has = now.lengths().of(is);
    if (way.isEmpty() || wanted.isEmpty() || has.isEmpty()) {
      return;
    }
    double needs = wanted.get().mm();
    boolean sameWay = Math.abs(needs - way.get().mm()) < NEAR_ZERO;
    boolean builtOtherwise = asBuilt && is.builtMm() != null && becomes.builtMm() == null;
    if (sameWay && !builtOtherwise) {
      return;
    }
    double lacks = needs - has.get().mm();
    double spare = wanted.get().spareMm();
    String figures = mm(has.get().mm()) + " are there, " + mm(needs) + " planned";
    if (lacks > spare) {
      remade.add(piece);
      told.put(
          piece.name(),
          piece.name()
              + (sameWay ? " does not reach: " : " no longer reaches: ")
              + figures
              + "; splice a piece in, or fit a new wire");
    } else if (lacks >= NEAR_ZERO) {
      told.put(
          piece.name(),
          piece.name() + " reaches by its spare at the ends: " + figures + ", spare " + mm(spare));
    } else if (-lacks > spare) {
      told.put(
          piece.name(),
          piece.name()
              + " is "
              + mm(-lacks)
              + " too long: "
              + figures
              + "; shorten it, or tie the slack where nothing catches it");
    }
  }

  /** By the layout, where it gives a way, unless both sides plan a cut length and these differ. */
  private static Optional<Need> need(Facts facts, Wire wire, Wire other) {
    Double cut = wire.cutMm();
    boolean planned = cut != null && other.cutMm() != null && !cut.equals(other.cutMm());
    Optional<Route> route = facts.routes().of(wire.id()).filter(way -> way.routedMm() > 0);
    if (cut != null && (planned || route.isEmpty())) {
      return Optional.of(new Need(cut, 2 * facts.harness().defaults().serviceMm()));
    }
    return route.map(way -> new Need(way.routedMm(), way.allowanceMm(Allowance.Kind.SERVICE)));
  }

  /** The wires that do not reach any more. */
  List<Piece> tooShort() {
    return List.copyOf(remade);
  }

  /** A sentence for each splice that is made anew elsewhere, then one for each wire. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    Map<String, Splice> splices = now.harness().splices();
    for (String is : new TreeSet<>(matching.splices().keySet())) {
      String becomes = matching.splices().getOrDefault(is, is);
      String from = where(splices.get(is));
      String to = where(target.harness().splices().get(becomes));
      if (from != null && to != null && !from.equals(to)) {
        sentences.add(
            becomes + " moves from " + from + " to " + to + ": cut it out, join it there");
      }
    }
    sentences.addAll(told.values());
    return sentences;
  }

  private static @Nullable String where(@Nullable Splice splice) {
    if (splice == null || (splice.on() == null && splice.at() == null)) {
      return null;
    }
    return splice.on() == null
        ? "node " + splice.at()
        : "segment "
            + splice.on()
            + (splice.offsetMm() == null ? "" : " at " + Quoted.number(splice.offsetMm()) + " mm");
  }

  private static String mm(double value) {
    return BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_EVEN).toPlainString() + " mm";
  }
}
