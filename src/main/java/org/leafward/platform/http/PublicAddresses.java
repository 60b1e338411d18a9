package org.leafward.platform.http;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Tells servers that anybody can reach from those that only this machine and its
 * neighbours can: whoever gives us an address must not see or steer those through us.
 */
final class PublicAddresses {

	/**
	 * IANA IPv4 Special-Purpose Address Registry (RFC 6890 and its updates), and
	 * multicast (RFC 5771).
	 */
	private static final List<AddressRange> NOT_PUBLIC_4 = ranges(
			// This host, this network.
			"0.0.0.0/8", "127.0.0.0/8", "255.255.255.255/32",
			// Private; shared with other customers of a provider (RFC 6598).
			"10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "100.64.0.0/10",
			// Link-local, where clouds tell their secrets.
			"169.254.0.0/16",
			// The same of one large cloud, which uses an address of its own for it.
			"168.63.129.16/32",
			// Protocols, documentation, relays to IPv6, benchmarks.
			"192.0.0.0/24", "192.0.2.0/24", "198.51.100.0/24", "203.0.113.0/24", "192.88.99.0/24", "198.18.0.0/15",
			// Multicast and reserved.
			"224.0.0.0/4", "240.0.0.0/4");

	/** All that has been given out for servers (RFC 4291, section 2.4). */
	private static final AddressRange GLOBAL_6 = AddressRange.of("2000::/3");

	/**
	 * What the IANA IPv6 Special-Purpose Address Registry takes out of it: protocols with
	 * Teredo, benchmarks and keys among them; documentation; 6to4, which carries an IPv4
	 * address.
	 */
	private static final List<AddressRange> NOT_PUBLIC_6 = ranges("2001::/23", "2001:db8::/32", "3fff::/20",
			"2002::/16");

	/**
	 * IPv4 as networks without it see it (RFC 6052); the IPv4 address is the last 32
	 * bits.
	 */
	private static final AddressRange TRANSLATED = AddressRange.of("64:ff9b::/96");

	private PublicAddresses() {
	}

	private static List<AddressRange> ranges(String... texts) {
		return Stream.of(texts).map(AddressRange::of).toList();
	}

	/**
	 * Whether an address is that of a server in the public Internet.
	 * @param address the address
	 * @return false for IPv4 addresses in an IPv6 dress too, but for the translated ones
	 */
	static boolean has(InetAddress address) {
		return has(address.getAddress());
	}

	private static boolean has(byte[] address) {
		if (address.length == 4) {
			return NOT_PUBLIC_4.stream().noneMatch((range) -> range.has(address));
		}
		if (TRANSLATED.has(address)) {
			return has(Arrays.copyOfRange(address, 12, 16));
		}
		return GLOBAL_6.has(address) && NOT_PUBLIC_6.stream().noneMatch((range) -> range.has(address));
	}

	/**
	 * Checks what a name stands for.
	 * @param name the name
	 * @param addresses its addresses
	 * @return the same
	 * @throws UnknownHostException if one of them is not public; said in the same words
	 * as of a name that doesn't exist, so that nobody learns which names exist here
	 */
	static InetAddress[] check(String name, InetAddress[] addresses) throws UnknownHostException {
		if (addresses.length == 0 || !Arrays.stream(addresses).allMatch(PublicAddresses::has)) {
			throw unknown(name);
		}
		return addresses;
	}

	static UnknownHostException unknown(String name) {
		return new UnknownHostException("'%s' is no server in the public Internet".formatted(name));
	}

}
