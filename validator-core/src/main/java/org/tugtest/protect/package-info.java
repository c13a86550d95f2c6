/** What fuses keep wires from: minimum cuts of their ratings, unfused ways, shorts, isolation. */
@NullMarked
package org.tugtest.protect;

import org.jspecify.annotations.NullMarked;
