package org.leafward.platform.http;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/**
 * Against the special-purpose address registries of IANA, typed from the RFCs that each
 * row names: the first and the last address of each block, and its neighbours outside.
 */
class PublicAddressesTests {

	@ParameterizedTest(name = "{0} to {1}, {2}")
	@CsvSource({ "0.0.0.0, 0.255.255.255, RFC 1122 this network", "10.0.0.0, 10.255.255.255, RFC 1918 private",
			"100.64.0.0, 100.127.255.255, RFC 6598 shared", "127.0.0.0, 127.255.255.255, RFC 1122 loopback",
			"169.254.0.0, 169.254.255.255, RFC 3927 link-local", "172.16.0.0, 172.31.255.255, RFC 1918 private",
			"192.0.0.0, 192.0.0.255, RFC 6890 protocols", "192.0.2.0, 192.0.2.255, RFC 5737 documentation",
			"192.88.99.0, 192.88.99.255, RFC 7526 relays", "192.168.0.0, 192.168.255.255, RFC 1918 private",
			"198.18.0.0, 198.19.255.255, RFC 2544 benchmarks", "198.51.100.0, 198.51.100.255, RFC 5737 documentation",
			"203.0.113.0, 203.0.113.255, RFC 5737 documentation", "224.0.0.0, 239.255.255.255, RFC 5771 multicast",
			"240.0.0.0, 255.255.255.254, RFC 1112 reserved", "255.255.255.255, 255.255.255.255, RFC 919 broadcast",
			"::, ::, RFC 4291 unspecified", "::1, ::1, RFC 4291 loopback",
			"64:ff9b:1::, 64:ff9b:1:ffff:ffff:ffff:ffff:ffff, RFC 8215 translation inside",
			"100::, 100::ffff:ffff:ffff:ffff, RFC 6666 discard",
			"2001::, 2001:1ff:ffff:ffff:ffff:ffff:ffff:ffff, RFC 2928",
			"2001:db8::, 2001:db8:ffff:ffff:ffff:ffff:ffff:ffff, RFC 3849 documentation",
			"2002::, 2002:ffff:ffff:ffff:ffff:ffff:ffff:ffff, RFC 3056 6to4",
			"3fff::, 3fff:fff:ffff:ffff:ffff:ffff:ffff:ffff, RFC 9637 documentation",
			"5f00::, 5f00:ffff:ffff:ffff:ffff:ffff:ffff:ffff, RFC 9602 segments",
			"fc00::, fdff:ffff:ffff:ffff:ffff:ffff:ffff:ffff, RFC 4193 unique local",
			"fe80::, febf:ffff:ffff:ffff:ffff:ffff:ffff:ffff, RFC 4291 link-local",
			"fec0::, feff:ffff:ffff:ffff:ffff:ffff:ffff:ffff, RFC 3879 site-local",
			"ff00::, ffff:ffff:ffff:ffff:ffff:ffff:ffff:ffff, RFC 4291 multicast" })
	void blocksOfTheRegistriesAreNotPublic(String first, String last, String source) throws Exception {
		assertThat(PublicAddresses.has(InetAddress.getByName(first))).as(source).isFalse();
		assertThat(PublicAddresses.has(InetAddress.getByName(last))).as(source).isFalse();
	}

	@ParameterizedTest
	@CsvSource({ "1.0.0.0", "9.255.255.255", "11.0.0.0", "100.63.255.255", "100.128.0.0", "126.255.255.255",
			"128.0.0.0", "169.253.255.255", "169.255.0.0", "172.15.255.255", "172.32.0.0", "192.0.1.0", "192.0.3.0",
			"192.88.98.255", "192.88.100.0", "192.167.255.255", "192.169.0.0", "198.17.255.255", "198.20.0.0",
			"198.51.99.255", "198.51.101.0", "203.0.112.255", "203.0.114.0", "223.255.255.255", "2001:200::",
			"2001:db7:ffff:ffff:ffff:ffff:ffff:ffff", "2001:db9::", "2003::", "3fff:1000::", "2a00:1450:4001:81b::200e",
			"3ffe:ffff:ffff:ffff:ffff:ffff:ffff:ffff" })
	void theirNeighboursArePublic(String address) throws Exception {
		assertThat(PublicAddresses.has(InetAddress.getByName(address))).isTrue();
	}

	/** Where clouds answer with the secrets of the machine that asks. */
	@ParameterizedTest
	@CsvSource({ "169.254.169.254", "169.254.170.2", "100.100.100.200", "192.0.0.192", "168.63.129.16",
			"fd00:ec2::254" })
	void metadataServersAreNotPublic(String address) throws Exception {
		assertThat(PublicAddresses.has(InetAddress.getByName(address))).isFalse();
	}

	/** RFC 4291, section 2.5.5; RFC 6052; RFC 3056: IPv4 addresses in IPv6 ones. */
	@ParameterizedTest
	@CsvSource({ "::ffff:127.0.0.1, false", "::ffff:8.8.8.8, false", "::127.0.0.1, false", "::8.8.8.8, false",
			"::ffff:0:127.0.0.1, false", "64:ff9b::127.0.0.1, false", "64:ff9b::10.0.0.1, false",
			"64:ff9b::169.254.169.254, false", "64:ff9b::8.8.8.8, true", "2002:7f00:1::, false",
			"2001:0:7f00:1::, false" })
	void anotherDressHelpsNoAddress(String address, boolean open) throws Exception {
		assertThat(PublicAddresses.has(sixteenOctets(address))).isEqualTo(open);
	}

	/** Java undresses mapped addresses unless it is told not to. */
	private static InetAddress sixteenOctets(String address) throws UnknownHostException {
		byte[] octets = InetAddress.getByName(address).getAddress();
		if (octets.length == 16) {
			return InetAddress.getByAddress(octets);
		}
		byte[] mapped = new byte[16];
		mapped[10] = (byte) 0xff;
		mapped[11] = (byte) 0xff;
		System.arraycopy(octets, 0, mapped, 12, 4);
		Inet6Address dressed = Inet6Address.getByAddress(null, mapped, -1);
		assertThat(dressed.getAddress()).hasSize(16);
		return dressed;
	}

	@Test
	void oneAddressThatIsNotPublicSpoilsTheName() throws Exception {
		InetAddress good = InetAddress.getByName("8.8.8.8");
		InetAddress bad = InetAddress.getByName("192.168.1.1");
		assertThat(PublicAddresses.check("a.example", new InetAddress[] { good })).containsExactly(good);
		refused(good, bad);
		refused(bad);
		refused();
	}

	private static void refused(InetAddress... addresses) {
		assertThatExceptionOfType(UnknownHostException.class)
			.isThrownBy(() -> PublicAddresses.check("a.example", addresses))
			.withMessage("'a.example' is no server in the public Internet");
	}

	@ParameterizedTest
	@CsvSource({ "localhost/8", "example.org/8", "1.2.3.4.5/8", "a/8" })
	void aRangeIsNoName(String text) {
		assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> AddressRange.of(text));
	}

}
