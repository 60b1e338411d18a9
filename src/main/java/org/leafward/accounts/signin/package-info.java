/**
 * How somebody becomes known: by a link that works once, by OpenID Connect where it is
 * set up, or by a token.
 */
@NullMarked
package org.leafward.accounts.signin;

import org.jspecify.annotations.NullMarked;
