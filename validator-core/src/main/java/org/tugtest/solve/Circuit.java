package org.tugtest.solve;

import java.util.List;

/**
 * What is to be solved.
 *
 * @param nodes how many nodes there are, numbered from 0
 * @param branches what lies between them; a branch is known by its number in this list
 */
public record Circuit(int nodes, List<Branch> branches) {
  public Circuit {
    branches = List.copyOf(branches);
    for (int i = 0; i < branches.size(); i++) {
      Branch branch = branches.get(i);
      if (branch.a() < 0 || branch.a() >= nodes || branch.b() < 0 || branch.b() >= nodes) {
        throw new IllegalArgumentException("branch " + i + " lies at a node that is not there");
      }
      if (branch instanceof Branch.Contact contact
          && !(contact.coil() >= 0
              && contact.coil() < branches.size()
              && branches.get(contact.coil()) instanceof Branch.Coil)) {
        throw new IllegalArgumentException("contact " + i + " has no coil");
      }
    }
  }
}
