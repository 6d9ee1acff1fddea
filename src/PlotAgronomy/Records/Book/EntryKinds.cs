
namespace PlotAgronomy.Records;

/// <summary>The sorts of entries by their words, and the fields that all of them have.</summary>
internal static class EntryKinds
{
    internal const string Id = "id";
    internal const string On = "on";
    internal const string Plot = "plot";
    internal const string What = "what";
    internal const string Corrects = "corrects";
    internal const string Note = "note";
    internal const string Pictures = "pictures";

    private static readonly Dictionary<string, Func<FieldReader, DateOnly, string, BookEntry>> Readers = new()
    {
        [SoilReportEntry.Word] = SoilReportEntry.Read,
        [NeedEntry.Word] = NeedEntry.Read,
        [LimeEntry.Word] = LimeEntry.Read,
        [FertilizerEntry.Word] = FertilizerEntry.Read,
        [SowingEntry.Word] = SowingEntry.Read,
        [RainEntry.Word] = RainEntry.Read,
        [CountEntry.Word] = CountEntry.Read,
        [WeedEntry.Word] = WeedEntry.Read,
        [ClippingEntry.Word] = ClippingEntry.Read,
        [BrowseEntry.Word] = BrowseEntry.Read,
        [CameraEntry.Word] = CameraEntry.Read,
        [NoteEntry.Word] = NoteEntry.Read,
        [StruckEntry.Word] = StruckEntry.Read,
    };

    internal static IEnumerable<string> Words => Readers.Keys.Order(StringComparer.Ordinal);

    internal static FieldWriter Written(BookEntry entry)
    {
        var to = new FieldWriter();
        to.Text(Id, entry.Id);
        to.Date(On, entry.On);
        to.Text(Plot, entry.Plot);
        to.Text(What, entry.What);
        to.Text(Corrects, entry.Corrects);
        entry.Write(to);
        to.Text(Note, entry.Note);
        to.List(Pictures, entry.Pictures);
        return to;
    }

    /// <summary>The entry that fields tell.</summary>
    /// <exception cref="Reference.DataFormatException">They tell none; the message names the place.</exception>
    internal static BookEntry Read(FieldReader from)
    {
        string what = from.Text(What);
        if (!Readers.TryGetValue(what, out var read))
        {
            throw from.Problem(What, $"expected one of {string.Join(", ", Words)}, found '{what}'");
        }

        var on = from.DateOrNull(On) ?? throw from.Problem(On, "is missing");
        string plot = from.Text(Plot);
        string? id = from.TextOrNull(Id);
        string? corrects = from.TextOrNull(Corrects);
        string? note = from.TextOrNull(Note);
        var pictures = from.List(Pictures);
        var entry = from.Try(null, () =>
            read(from, on, plot) with
            {
                Id = id,
                Corrects = corrects,
                Note = note,
                Pictures = pictures,
            }
        );
        from.RefuseUnread();
        return entry;
    }
}
