package org.lapwright.app.usecase.capture;

/** What there is to know of a timing source beside its passes. */
public interface SourceNews {
    /** Something came that cannot be believed, and why; it was left out. */
    void unreadable(String why);

    /** The sender began anew: its clock and its count start again. */
    void restarted();

    /** The sender says that it lost so many passes since it began. */
    void dropped(long passes);

    /** Nothing comes any more, and why; the source goes on trying by itself. */
    void gone(String why);

    /** It comes again. */
    void back();

    /** The sender's clock was set forward or back: no lap goes over that. */
    void stepped();
}
