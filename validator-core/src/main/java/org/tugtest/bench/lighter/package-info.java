/** Where the harness could do with less wire. */
@NullMarked
package org.tugtest.bench.lighter;

import org.jspecify.annotations.NullMarked;
