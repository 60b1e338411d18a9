/** Says HTML in another language; the only package that knows the parser of HTML. */
@NullMarked
package org.leafward.spoken.html;

import org.jspecify.annotations.NullMarked;
