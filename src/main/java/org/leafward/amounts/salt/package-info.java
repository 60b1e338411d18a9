/**
 * Water that carries salt out of the root zone: after de-icing, and after too much
 * fertiliser.
 */
@NamedInterface("salt")
@NullMarked
package org.leafward.amounts.salt;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
