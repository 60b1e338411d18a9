package org.leafward.pages;

import java.util.List;
import java.util.UUID;

/**
 * What a reader may do with an entry of a dated list, right where it stands.
 *
 * @param tasks identifiers of the tasks that the entry stands for, at least one
 * @param done whether they can be noted as done
 * @param skip whether they can be left out
 * @param undo whether the last of these can be taken back
 * @param back which page to come back to, a word that the receiver knows
 */
public record TaskActs(List<UUID> tasks, boolean done, boolean skip, boolean undo, String back) {

	public TaskActs {
		tasks = List.copyOf(tasks);
	}

	/**
	 * Whether the entry can change where it stands, without another page.
	 * @return true on the pages whose receiver answers with the entry alone when asked to
	 */
	public boolean inPlace() {
		return this.back.equals("home") || this.back.equals("site");
	}

	/**
	 * A name for the parts of the page that belong to the entry.
	 * @return the first identifier
	 */
	public UUID first() {
		return this.tasks.get(0);
	}

}
