package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.text.NaturalOrder;

/** Which pairs could go into which others, no cavity being promised twice. */
final class Merging {
  /** Neighbours that are planned for one pair; those that would be left fullest come first. */
  private static final int TRIED = 12;

  private final Roles roles;
  private final ContactMove fit;
  private final Map<String, Set<Joint.Contact>> promised = new HashMap<>();
  private final Set<String> gone = new HashSet<>();

  Merging(Facts facts) {
    this.roles = new Roles(facts);
    this.fit = new ContactMove(facts);
  }

  /**
   * Pairs that could be merged, by the nodes and looms that they stand at.
   *
   * @param takes whether a pair counts; it is asked once of each, with what is known of it
   */
  static Map<String, List<Joint>> beside(Facts facts, BiPredicate<MatedPair, Joint.Looked> takes) {
    Map<String, List<Joint>> beside = new LinkedHashMap<>();
    for (MatedPair pair : MatedPair.all(facts.harness(), facts.wiring().mating())) {
      String other = pair.otherConnector().orElse(null);
      if (other != null) {
        Joint.Looked looked = Joint.at(facts, pair, other);
        if (takes.test(pair, looked)) {
          looked
              .joint()
              .ifPresent(
                  joint ->
                      beside.computeIfAbsent(joint.stands(), key -> new ArrayList<>()).add(joint));
        }
      }
    }
    return beside;
  }

  /**
   * What becomes of each of these pairs, which stand at the same nodes: a proposal, or it stays.
   * The pair with the fewest contacts moves first; one that takes contacts in stays.
   */
  List<Optional<Proposal>> of(List<Joint> joints) {
    List<Joint> movers = new ArrayList<>(joints);
    movers.sort(
        Comparator.<Joint>comparingInt(joint -> joint.used().size())
            .thenComparing(joint -> joint.near().housing().cavityNames().size())
            .thenComparing(Joint::id, NaturalOrder.NATURAL.reversed()));
    List<Optional<Proposal>> all = new ArrayList<>();
    for (Joint mover : movers) {
      boolean stays = mover.used().isEmpty() || promised.containsKey(mover.id());
      Proposal best = stays ? null : best(mover, joints);
      if (best != null) {
        gone.add(mover.id());
        Set<Joint.Contact> taken =
            promised.computeIfAbsent(best.target().id(), key -> new HashSet<>());
        boolean turned = !best.large().id().equals(best.target().id());
        for (MergePlan.Move move : best.plan().moves()) {
          taken.add(turned ? move.to().turned() : move.to());
        }
      }
      all.add(Optional.ofNullable(best));
    }
    return all;
  }

  private int left(Joint joint) {
    return joint.free().size() - promised.getOrDefault(joint.id(), Set.of()).size();
  }

  private @Nullable Proposal best(Joint mover, List<Joint> joints) {
    List<Joint> targets = new ArrayList<>();
    for (Joint joint : joints) {
      boolean stays = !joint.id().equals(mover.id()) && !gone.contains(joint.id());
      if (stays && !joint.used().isEmpty() && left(joint) >= mover.used().size()) {
        targets.add(joint);
      }
    }
    targets.sort(
        Comparator.comparingInt(this::left).thenComparing(Joint::id, NaturalOrder.NATURAL));
    Proposal best = null;
    for (Joint target : targets.subList(0, Math.min(TRIED, targets.size()))) {
      for (Joint large : facing(mover, target)) {
        best = better(best, mover, target, large);
      }
    }
    return best;
  }

  /** The other pair, turned so that looms and nodes agree; where both ways do, sides decide. */
  private static List<Joint> facing(Joint mover, Joint target) {
    List<Joint> agreeing = new ArrayList<>();
    List<Joint> sameSide = new ArrayList<>();
    for (Joint large : List.of(target, target.turned())) {
      if (large.near().stand().equals(mover.near().stand())) {
        agreeing.add(large);
        if (large.near().housing().side() == mover.near().housing().side()) {
          sameSide.add(large);
        }
      }
    }
    return sameSide.isEmpty() ? agreeing : sameSide;
  }

  private @Nullable Proposal better(
      @Nullable Proposal best, Joint mover, Joint target, Joint large) {
    Set<Joint.Contact> taken = new HashSet<>();
    for (Joint.Contact one : promised.getOrDefault(target.id(), Set.of())) {
      taken.add(one);
      taken.add(one.turned());
    }
    MergePlan plan = MergePlan.of(roles, fit, mover, large, taken).orElse(null);
    if (plan == null) {
      return best;
    }
    Proposal found = new Proposal(mover, target, large, plan, left(target) - mover.used().size());
    return best == null || Proposal.BEST.compare(found, best) < 0 ? found : best;
  }

  /**
   * A way to merge one pair into another.
   *
   * @param target the other as it was found
   * @param large the same, turned so that near meets near
   * @param left how many free contacts it leaves
   */
  record Proposal(Joint small, Joint target, Joint large, MergePlan plan, int left) {
    static final Comparator<Proposal> BEST =
        Comparator.<Proposal>comparingInt(one -> one.plan().beside().size())
            .thenComparingInt(Proposal::left)
            .thenComparing(one -> one.target().id(), NaturalOrder.NATURAL);
  }
}
