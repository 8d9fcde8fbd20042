/** What was driven, and what the racer fixed before it was judged: runs of two sides, the plan, the margin. */
package org.lapwright.core.trial.session;
