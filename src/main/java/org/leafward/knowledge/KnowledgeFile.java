package org.leafward.knowledge;

import java.nio.charset.StandardCharsets;

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
