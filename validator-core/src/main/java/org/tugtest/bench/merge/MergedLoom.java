package org.tugtest.bench.merge;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Ref;
import org.tugtest.model.Seal;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.Wiring;
import org.tugtest.read.ReadHarness;
import org.tugtest.rule.connectors.MergeProposal;

/**
 * The loom that a proposal makes: the wires of the pair that goes end in the cavities of the one
 * that stays, and the two connectors are gone. A terminal that the new cavity takes goes along with
 * its seal, as a person would do it; else the one that is usual there comes on.
 */
public final class MergedLoom {
  private static final Connector.Cavity NOTHING = new Connector.Cavity(null, null, null, null);

  private final Facts now;
  private final MergeProposal proposal;
  private final Map<Point, Point> moved = new LinkedHashMap<>();
  private final Map<String, Connector> connectors;

  private MergedLoom(Facts now, MergeProposal proposal) {
    this.now = now;
    this.proposal = proposal;
    this.connectors = new LinkedHashMap<>(now.harness().connectors());
  }

  /** What is known of the loom once it is merged. */
  public static Facts of(Facts now, MergeProposal proposal) {
    Harness merged = new MergedLoom(now, proposal).harness();
    return Facts.of(ReadHarness.unwritten(merged), now.today(), now.knownRules());
  }

  private Harness harness() {
    for (MergeProposal.Move move : proposal.moves()) {
      moved.put(move.near(), move.toNear());
      moved.put(move.far(), move.toFar());
    }
    connectors.remove(proposal.near());
    connectors.remove(proposal.far());
    Map<String, Wire> wires = new LinkedHashMap<>();
    now.harness().wires().forEach((id, wire) -> wires.put(id, moved(wire)));
    Harness plain = now.harness().withConnectors(connectors).withWires(wires);
    Fitting usual = new Fitting(plain, Wiring.of(plain));
    moved.forEach((from, to) -> fit(from, to, usual));
    return plain.withConnectors(connectors);
  }

  /** Writes for a cavity what goes there otherwise than is usual there. */
  private void fit(Point from, Point to, Fitting usual) {
    Connector connector = connectors.get(to.owner());
    Housing housing = now.wiring().mating().housingOf(to.owner()).orElse(null);
    if (connector == null || housing == null || now.wiring().endsAt(from).isEmpty()) {
      return;
    }
    Connector.Cavity is = connector.cavities().getOrDefault(to.name(), NOTHING);
    Connector.Cavity was = cavity(from);
    Terminal terminal = now.fitting().terminal(from).part();
    boolean keeps = terminal != null && Fitting.fitsCavity(terminal, housing, to.name());
    Terminal usualTerminal = usual.terminal(to).part();
    boolean names = keeps && !terminal.equals(usualTerminal);
    Seal seal = keeps && housing.sealed() ? now.fitting().seal(from).part() : null;
    boolean namesSeal = seal != null && !seal.equals(usual.seal(to).part());
    Connector.Cavity becomes =
        new Connector.Cavity(
            names ? terminal.id() : is.terminal(),
            namesSeal ? seal.id() : is.seal(),
            null,
            was == null ? null : was.evidence());
    if (!becomes.equals(is)) {
      Map<String, Connector.Cavity> cavities = new LinkedHashMap<>(connector.cavities());
      cavities.put(to.name(), becomes);
      connectors.put(connector.id(), with(connector, cavities));
    }
  }

  private Connector.@Nullable Cavity cavity(Point point) {
    Connector connector = now.harness().connectors().get(point.owner());
    return connector == null ? null : connector.cavities().get(point.name());
  }

  private static Connector with(Connector old, Map<String, Connector.Cavity> cavities) {
    return new Connector(
        old.id(),
        old.loom(),
        old.housing(),
        old.mates(),
        old.at(),
        old.parked(),
        old.terminals(),
        old.seals(),
        old.blanked(),
        cavities,
        old.label(),
        old.boot(),
        old.breakoutMm(),
        old.serviceMm(),
        old.pinMap());
  }

  private Wire moved(Wire wire) {
    Ref from = moved(wire.from());
    Ref to = moved(wire.to());
    return Objects.equals(from, wire.from()) && Objects.equals(to, wire.to())
        ? wire
        : wire.between(from, to);
  }

  private @Nullable Ref moved(@Nullable Ref end) {
    Point to = now.wiring().pointOf(end).map(moved::get).orElse(null);
    return to == null ? end : Ref.parse(to.text());
  }
}
