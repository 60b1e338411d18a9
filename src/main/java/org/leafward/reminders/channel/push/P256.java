package org.leafward.reminders.channel.push;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PublicKey;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECFieldFp;
import java.security.spec.ECGenParameterSpec;
import java.security.spec.ECParameterSpec;
import java.security.spec.ECPoint;
import java.security.spec.ECPublicKeySpec;
import java.util.Arrays;

/** Keys on the curve P-256 (FIPS 186-4, D.1.2.3), and how they are written. */
final class P256 {

	/** Octets of a point in uncompressed form (X9.62): a mark and two coordinates. */
	static final int POINT = 65;

	private static final int COORDINATE = 32;

	private static final byte UNCOMPRESSED = 4;

	private static final String NAME = "secp256r1";

	private static final ECParameterSpec CURVE = curve();

	private P256() {
	}

	/** Makes a new pair of keys. */
	static KeyPair make() {
		try {
			KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
			generator.initialize(new ECGenParameterSpec(NAME));
			return generator.generateKeyPair();
		}
		catch (GeneralSecurityException ex) {
			throw missing(ex);
		}
	}

	/** Writes a public key as a point in uncompressed form. */
	static byte[] point(PublicKey key) {
		ECPoint point = ((ECPublicKey) key).getW();
		return ByteBuffer.allocate(POINT)
			.put(UNCOMPRESSED)
			.put(coordinate(point.getAffineX()))
			.put(coordinate(point.getAffineY()))
			.array();
	}

	/**
	 * Reads a public key.
	 * @param octets a point in uncompressed form
	 * @return the key
	 * @throws IllegalArgumentException if it is no point of the curve: to calculate with
	 * such a one could give our part of a secret away (NIST SP 800-56A, section 5.6.2.3)
	 */
	static PublicKey key(byte[] octets) {
		if (octets.length != POINT || octets[0] != UNCOMPRESSED) {
			throw new IllegalArgumentException("no point in uncompressed form");
		}
		BigInteger x = new BigInteger(1, Arrays.copyOfRange(octets, 1, 1 + COORDINATE));
		BigInteger y = new BigInteger(1, Arrays.copyOfRange(octets, 1 + COORDINATE, POINT));
		if (!onCurve(x, y)) {
			throw new IllegalArgumentException("no point of the curve");
		}
		try {
			return KeyFactory.getInstance("EC").generatePublic(new ECPublicKeySpec(new ECPoint(x, y), CURVE));
		}
		catch (GeneralSecurityException ex) {
			throw missing(ex);
		}
	}

	/** The cofactor is 1, so every point of the curve is one of the right order. */
	private static boolean onCurve(BigInteger x, BigInteger y) {
		BigInteger p = ((ECFieldFp) CURVE.getCurve().getField()).getP();
		if (x.compareTo(p) >= 0 || y.compareTo(p) >= 0) {
			return false;
		}
		BigInteger right = x.multiply(x).add(CURVE.getCurve().getA()).multiply(x).add(CURVE.getCurve().getB());
		return y.multiply(y).subtract(right).mod(p).signum() == 0;
	}

	/** As long as it has to be, with zeros in front and without a sign. */
	private static byte[] coordinate(BigInteger number) {
		byte[] octets = number.toByteArray();
		byte[] whole = new byte[COORDINATE];
		int length = Math.min(COORDINATE, octets.length);
		System.arraycopy(octets, octets.length - length, whole, COORDINATE - length, length);
		return whole;
	}

	private static ECParameterSpec curve() {
		try {
			AlgorithmParameters parameters = AlgorithmParameters.getInstance("EC");
			parameters.init(new ECGenParameterSpec(NAME));
			return parameters.getParameterSpec(ECParameterSpec.class);
		}
		catch (GeneralSecurityException ex) {
			throw missing(ex);
		}
	}

	private static IllegalStateException missing(GeneralSecurityException trouble) {
		return new IllegalStateException("every Java has P-256", trouble);
	}

}
