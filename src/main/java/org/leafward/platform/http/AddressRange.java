package org.leafward.platform.http;

import java.net.InetAddress;
import java.net.UnknownHostException;

/**
 * A range of network addresses.
 *
 * @param first its first address, 4 or 16 octets
 * @param bits how many leading bits all of its addresses share
 */
record AddressRange(byte[] first, int bits) {

	/**
	 * Reads a range.
	 * @param text an address, a slash and a number of bits, such as {@code 10.0.0.0/8}
	 * @return the range
	 * @throws IllegalArgumentException if it is none
	 */
	static AddressRange of(String text) {
		int slash = text.indexOf('/');
		String literal = text.substring(0, slash);
		// Anything else would be looked up as a name.
		if (!literal.matches("[0-9.]+|[0-9a-f:.]*:[0-9a-f:.]*")) {
			throw new IllegalArgumentException("'%s' is no range of addresses".formatted(text));
		}
		try {
			return new AddressRange(InetAddress.getByName(literal).getAddress(),
					Integer.parseInt(text.substring(slash + 1)));
		}
		catch (UnknownHostException ex) {
			throw new IllegalArgumentException("'%s' is no range of addresses".formatted(text), ex);
		}
	}

	boolean has(byte[] address) {
		if (address.length != this.first.length) {
			return false;
		}
		int whole = this.bits / 8;
		for (int at = 0; at < whole; at++) {
			if (address[at] != this.first[at]) {
				return false;
			}
		}
		int rest = this.bits % 8;
		return rest == 0 || ((address[whole] ^ this.first[whole]) & 0xff) >>> (8 - rest) == 0;
	}

}
