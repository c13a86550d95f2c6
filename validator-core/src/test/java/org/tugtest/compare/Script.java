package org.tugtest.compare;

import java.util.List;
import java.util.Random;

/** Alters a loom step by step and keeps what a person would say was done. */
final class Script {
  final Loom loom;
  final List<Said> said;
  private final Hand hand;
  private final WireEdits wires;
  private final OwnerEdits owners;

  Script(Loom base, Random random) {
    hand = new Hand(base.copy(), random);
    loom = hand.loom;
    said = hand.said;
    wires = new WireEdits(hand);
    owners = new OwnerEdits(hand);
  }

  void steps(int count) {
    for (int i = 0; i < count; i++) {
      switch (hand.random.nextInt(18)) {
        case 0, 1, 2 -> wires.rePin();
        case 3 -> wires.colour();
        case 4 -> wires.gauge();
        case 5 -> wires.length();
        case 6 -> wires.removeWire();
        case 7 -> wires.addWire();
        case 8 -> wires.renameWire();
        case 9 -> owners.renameOwner();
        case 10 -> owners.moveSplice();
        case 11 -> owners.fuse();
        case 12 -> owners.policy();
        case 13 -> wires.exchangeIds();
        case 14 -> wires.exchangeCavities();
        case 15 -> owners.swapHousing();
        case 16 -> wires.reroute();
        default -> owners.addOwner();
      }
    }
  }

  /** Calls a connector or splice otherwise, here and in all that names it. */
  void rename(String section, String id, String now) {
    owners.rename(section, id, now);
  }
}
