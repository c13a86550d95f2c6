package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.network.Point;

/**
 * That all contacts of a mated pair go into free cavities of another that stands beside it.
 *
 * @param near the half that goes, by which the pair is known
 * @param far its other half, which goes too
 * @param largeNear the half that takes in what was in {@code near}
 * @param largeFar the half that takes in what was in {@code far}
 * @param moves contact by contact, in the order of the cavities of {@code near}
 * @param beside where feed would still be beside return or a signal
 */
public record MergeProposal(
    String near,
    String far,
    String largeNear,
    String largeFar,
    List<Move> moves,
    List<String> beside) {
  public MergeProposal {
    moves = List.copyOf(moves);
    beside = List.copyOf(beside);
  }

  /** One contact on both halves: from which cavities into which. */
  public record Move(Point near, Point toNear, Point far, Point toFar) {}

  /**
   * All proposals for a harness, those that {@code connector-could-merge} finds, in its order.
   *
   * @param leftOut pairs that are not to be merged, by the half that says what it mates
   */
  public static List<MergeProposal> of(Facts facts, Predicate<Subject> leftOut) {
    Merging merging = new Merging(facts);
    List<MergeProposal> all = new ArrayList<>();
    Merging.beside(facts, (pair, looked) -> !leftOut.test(pair.first()))
        .values()
        .forEach(
            joints ->
                merging
                    .of(joints)
                    .forEach(found -> found.ifPresent(one -> all.add(MergeProposal.of(one)))));
    return List.copyOf(all);
  }

  private static MergeProposal of(Merging.Proposal proposal) {
    Joint small = proposal.small();
    Joint large = proposal.large();
    List<Move> moves = new ArrayList<>();
    for (MergePlan.Move move : proposal.plan().moves()) {
      moves.add(
          new Move(
              small.near().at(move.from().near()),
              large.near().at(move.to().near()),
              small.far().at(move.from().far()),
              large.far().at(move.to().far())));
    }
    return new MergeProposal(
        small.near().connector(),
        small.far().connector(),
        large.near().connector(),
        large.far().connector(),
        moves,
        proposal.plan().beside());
  }
}
