package org.lapwright.app.usecase.capture;

/** What there is to know of a timing source beside its passes. */
public interface SourceNews {
    /** Something came that cannot be believed, and why; it was left out. */
    void unreadable(String why);

    /** The sender began anew: its clock and its count start again. */
    void restarted();

    /** The sender says that it lost so many passes since it began. */
    void dropped(long passes);
}
