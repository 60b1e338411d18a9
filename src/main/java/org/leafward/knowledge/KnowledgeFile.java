package org.leafward.knowledge;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** A knowledge file as it was found, not yet read. */
public final class KnowledgeFile {

	/** Files beyond this many bytes are refused. */
	public static final int LARGEST = 2 * 1024 * 1024;

	private final String name;

	private final byte[] content;

	/**
	 * Creates a file.
	 * @param name kind and file name, for example {@code rulepacks/evergreens.yaml}
	 * @param content what is in it; of larger files at least one byte beyond
	 * {@link #LARGEST}
	 */
	public KnowledgeFile(String name, byte[] content) {
		this.name = name;
		this.content = content.clone();
	}

	/**
	 * A file from text, for tests and for drafts in an editor.
	 * @param name kind and file name
	 * @param text what is in it
	 * @return the file
	 */
	public static KnowledgeFile of(String name, String text) {
		return new KnowledgeFile(name, text.getBytes(StandardCharsets.UTF_8));
	}

	/**
	 * A fingerprint of files, the same on any machine for the same ones.
	 * @param files the files, in a fixed order
	 * @param beside a text that counts, too
	 * @return SHA-256, 64 hexadecimal digits
	 */
	public static String fingerprint(List<KnowledgeFile> files, String beside) {
		try {
			MessageDigest digest = MessageDigest.getInstance("SHA-256");
			for (KnowledgeFile file : files) {
				digest.update(file.name.getBytes(StandardCharsets.UTF_8));
				digest.update((byte) 0);
				digest.update(file.content);
				digest.update((byte) 0);
			}
			digest.update(beside.getBytes(StandardCharsets.UTF_8));
			return HexFormat.of().formatHex(digest.digest());
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("every Java platform has SHA-256", ex);
		}
	}

	public String name() {
		return this.name;
	}

	public byte[] content() {
		return this.content.clone();
	}

	@Override
	public String toString() {
		return this.name;
	}

}
