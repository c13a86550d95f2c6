package org.tugtest.report.html.bundles;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.text.Figures;
import org.tugtest.route.Transitions;

/**
 * A node where coverings meet, in words.
 *
 * @param what how many branches come together
 * @param branches each with its covering and outside diameter, the thickest first
 * @param steps from the thickest to each other
 * @param over what goes over the joint, and whether it does
 * @param basis what the diameters rest on; empty when all are given
 */
public record Joint(
    String node,
    String what,
    Few<String> branches,
    Few<String> steps,
    List<Over> over,
    String basis) {
  private static final int MOST = 200;
  private static final int MOST_BRANCHES = 12;

  /** A covering over the joint; {@code bad} when it does not go over it. */
  public record Over(String covering, String says, boolean bad) {}

  /** The joints of a harness, as far as a page takes them. */
  static Few<Joint> all(Facts facts) {
    Few<Transitions.AtNode> nodes = Few.of(facts.transitions().nodes(), MOST);
    return new Few<>(nodes.shown().stream().map(Joint::of).toList(), nodes.more());
  }

  private static Joint of(Transitions.AtNode at) {
    Basis basis = Basis.GIVEN;
    for (Transitions.Branch branch : at.branches()) {
      basis = basis.weaker(branch.basis());
    }
    return new Joint(
        at.node(),
        at.breakout() ? "breakout of " + at.branches().size() : "one run",
        Few.of(at.branches().stream().map(Joint::branch).toList(), MOST_BRANCHES),
        Few.of(at.steps().stream().map(Joint::step).toList(), MOST_BRANCHES),
        at.over().stream().map(over -> over(over, at)).toList(),
        basis == Basis.GIVEN ? "" : basis.word());
  }

  private static String branch(Transitions.Branch branch) {
    String covering =
        branch.coverings().isEmpty() ? "bare" : String.join(" under ", branch.coverings());
    return branch.segment() + ": " + covering + ", " + size(branch);
  }

  private static String size(Transitions.Branch branch) {
    if (!branch.unsized().isEmpty()) {
      return branch.outerMm() > 0
          ? "over " + mm(branch.outerMm()) + ", as a wire in it has no diameter"
          : "diameter not known";
    }
    return branch.sized() ? mm(branch.outerMm()) : "no wire in it here";
  }

  private static String step(Transitions.Step step) {
    String same = step.covering() ? "another covering" : "the same covering";
    if (!step.from().sized() || !step.to().sized()) {
      return "to " + step.to().segment() + ": " + same;
    }
    String size =
        step.mm() < 0.05
            ? "as thick"
            : mm(step.mm())
                + " thinner ("
                + mm(step.from().outerMm())
                + " to "
                + mm(step.to().outerMm())
                + ")";
    return "to " + step.to().segment() + ": " + size + ", " + same;
  }

  private static Over over(Transitions.Over over, Transitions.AtNode at) {
    List<String> says = new ArrayList<>();
    Double least = over.leastMm();
    Double most = over.mostMm();
    if (least != null && most != null) {
      says.add("takes " + mm(least) + " to " + mm(most));
    }
    says.add(
        switch (over.fit()) {
          case FITS -> "goes over all";
          case TOO_SMALL -> "too small for " + at.branches().get(0).segment();
          case TOO_LARGE ->
              "does not close on " + at.branches().get(at.branches().size() - 1).segment();
          case NOT_KNOWN -> "not known whether it fits";
        });
    boolean bad =
        over.fit() == Transitions.Fit.TOO_SMALL || over.fit() == Transitions.Fit.TOO_LARGE;
    return new Over(over.covering(), String.join(", ", says), bad);
  }

  private static String mm(double mm) {
    return Figures.fixed(mm, 1) + " mm";
  }
}
