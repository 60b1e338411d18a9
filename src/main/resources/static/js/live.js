'use strict';

// Pages change in place by htmx; what it can't say by an answer of the server is said here: that there is none.
(function () {
	function unreached() {
		const said = document.getElementById('said');
		const words = document.getElementById('unreached');
		if (said && words) {
			said.textContent = words.textContent;
		}
	}

	document.addEventListener('htmx:sendError', unreached);
	document.addEventListener('htmx:timeout', unreached);
})();
