/**
 * Owner of the library that encodes QR codes.
 */
@NullMarked
package org.leafward.quick.qr;

import org.jspecify.annotations.NullMarked;
