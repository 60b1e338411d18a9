package org.leafward.register.core.list;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.register.Placement;

/**
 * A planting of a list, as far as its line tells; texts are as they were written.
 *
 * @param number of its line in the list, from 1; of its first line when it has several
 * @param written the whole line
 * @param name name of the plant; empty when there is none
 * @param count number of plants; empty when it isn't told
 * @param label what its people call it: the name of the plant when nothing else is told
 * @param planted when it was planted; empty when it isn't told
 * @param placement where its roots are; null when it isn't told
 * @param area area of the bed with its unit; empty when it isn't told
 * @param bed name of the bed in which it stands; empty when it isn't told
 * @param remarks sentences about what was read otherwise than it was written
 */
public record ListLine(int number, String written, String name, String count, String label, String planted,
		@Nullable Placement placement, String area, String bed, List<String> remarks) {

	/**
	 * A line that tells no bed.
	 * @param number of its line in the list
	 * @param written the whole line
	 * @param name name of the plant
	 * @param count number of plants
	 * @param label what its people call it
	 * @param planted when it was planted
	 * @param placement where its roots are; null when it isn't told
	 * @param area area of the bed with its unit
	 * @param remarks sentences about what was read otherwise
	 */
	public ListLine(int number, String written, String name, String count, String label, String planted,
			@Nullable Placement placement, String area, List<String> remarks) {
		this(number, written, name, count, label, planted, placement, area, "", remarks);
	}

	public ListLine {
		remarks = List.copyOf(remarks);
	}

}
