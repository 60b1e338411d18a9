/** PDF of our own pages. The only package that knows how they are made. */
@NamedInterface("print")
@NullMarked
package org.leafward.pages.print;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
