package fairflame.document.page;

/** What stands at the head and foot of every page. Its height must not depend on the page's number. */
public interface Running {
    Block head(int page, int pages);

    Block foot(int page, int pages);
}
