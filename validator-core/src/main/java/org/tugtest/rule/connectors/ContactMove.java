package org.tugtest.rule.connectors;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Housing;
import org.tugtest.model.Seal;
import org.tugtest.model.Terminal;
import org.tugtest.network.Fitting;
import org.tugtest.network.WireEnd;

/**
 * Whether the wires of a cavity can move into a free cavity of another connector, as far as the
 * parts are known: family and side of a terminal, conductor range, insulation, rating, seal.
 */
final class ContactMove {
  private final Facts facts;
  private final Fitting fitting;

  ContactMove(Facts facts) {
    this.facts = facts;
    this.fitting = facts.fitting();
  }

  /** Whether what holds for all contacts of a half allows to move them into another half. */
  boolean allows(Housing from, Housing to) {
    return (to.sealed() || !from.sealed())
        && (from.maxC() == null || to.maxC() == null || to.maxC() >= from.maxC());
  }

  /** Whether the wires of one cavity, if any, can move into another. */
  boolean fits(Joint.Side from, String cavity, Joint.Side to, String free) {
    List<WireEnd> ends = facts.wiring().endsAt(from.at(cavity));
    return ends.isEmpty()
        || (terminalFits(from, cavity, to, free, ends) && sealFits(to, free, ends));
  }

  private boolean terminalFits(
      Joint.Side from, String cavity, Joint.Side to, String free, List<WireEnd> ends) {
    Terminal present = fitting.terminal(from.at(cavity)).part();
    if (present != null && Fitting.fitsCavity(present, to.housing(), free)) {
      return true;
    }
    List<String> named = terminals(to, free);
    if (named.isEmpty() && present == null) {
      return sameOrUnknown(from.housing().familyOf(cavity), to.housing().familyOf(free));
    }
    return named.stream()
        .map(id -> facts.harness().parts().terminals().get(id))
        .anyMatch(part -> part != null && takes(part, present, to, free, ends));
  }

  private boolean takes(
      Terminal part, @Nullable Terminal present, Joint.Side to, String free, List<WireEnd> ends) {
    boolean rated =
        present == null
            || present.maxA() == null
            || part.maxA() == null
            || part.maxA() >= present.maxA();
    return rated
        && Fitting.fitsCavity(part, to.housing(), free)
        && ends.size() <= Math.max(1, part.maxWires())
        && fitting.areaProblem(part, ends).isEmpty()
        && fitting
            .insulationProblem(part.insulationMinMm(), part.insulationMaxMm(), ends)
            .isEmpty();
  }

  private boolean sealFits(Joint.Side to, String free, List<WireEnd> ends) {
    if (!to.housing().sealed()) {
      return true;
    }
    List<String> named = seals(to, free);
    String family = to.housing().familyOf(free);
    return ends.size() == 1
        && (named.isEmpty()
            || named.stream()
                .map(id -> facts.harness().parts().seals().get(id))
                .anyMatch(seal -> seal != null && takes(seal, family, ends)));
  }

  private boolean takes(Seal seal, @Nullable String family, List<WireEnd> ends) {
    return sameOrUnknown(seal.family(), family)
        && fitting
            .insulationProblem(seal.insulationMinMm(), seal.insulationMaxMm(), ends)
            .isEmpty();
  }

  private List<String> terminals(Joint.Side side, String cavity) {
    Connector connector = facts.harness().connectors().get(side.connector());
    Connector.Cavity own = connector == null ? null : connector.cavities().get(cavity);
    if (own != null && own.terminal() != null) {
      return List.of(own.terminal());
    }
    return connector == null || connector.terminals().isEmpty()
        ? side.housing().terminals()
        : connector.terminals();
  }

  private List<String> seals(Joint.Side side, String cavity) {
    Connector connector = facts.harness().connectors().get(side.connector());
    Connector.Cavity own = connector == null ? null : connector.cavities().get(cavity);
    if (own != null && own.seal() != null) {
      return List.of(own.seal());
    }
    return connector == null || connector.seals().isEmpty()
        ? side.housing().seals()
        : connector.seals();
  }

  private static boolean sameOrUnknown(@Nullable String left, @Nullable String right) {
    return left == null || right == null || left.equals(right);
  }
}
