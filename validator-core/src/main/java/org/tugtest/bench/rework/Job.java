package org.tugtest.bench.rework;

import java.util.List;

/**
 * One thing that has to come into its seat.
 *
 * @param wanted how it shall sit
 * @param sources what its ends sit in now; empty for new wires
 * @param fresh it needs a new crimp or a new splice
 */
record Job(Unit wanted, List<Unit> sources, boolean fresh) {
  Job {
    sources = List.copyOf(sources);
  }

  Seat to() {
    return wanted.seat();
  }

  /** Whether it is one thing that only changes its seat or its terminal. */
  boolean whole() {
    return sources.size() == 1 && sources.get(0).ends().equals(wanted.ends());
  }

  /** Whether it stays in its seat and only gets another terminal. */
  boolean inPlace() {
    return whole() && sources.get(0).seat().equals(to());
  }
}
