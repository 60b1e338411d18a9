package org.leafward.accounts;

import java.util.UUID;

/**
 * The owner of an address has said that mail may come.
 *
 * @param person whose address
 */
public record AddressConfirmed(UUID person) {
}
