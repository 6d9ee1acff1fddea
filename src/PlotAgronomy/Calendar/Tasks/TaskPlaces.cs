namespace PlotAgronomy.Calendar;

/// <summary>What fills the places of the texts of a season's tasks.</summary>
internal sealed class TaskPlaces(SeasonRequest request, SmotherDates? smother)
{
    internal (string Place, string Value)[] All { get; } =
    [
        ("legumes", CalendarText.Names(request.Kinds.Where(k => k.IsLegume))),
        ("stand", CalendarText.Names(request.Kinds)),
        ("cover", request.Chosen.CoverKind is { } cover ? Lower(cover) : "the standing crop"),
        ("smother", Lower(smother?.Kind)),
        ("words", Sentence(request.Weeds?.Words)),
        ("days", smother is { Days: var (low, high) } ? DaysBetween(low, high) : LabelDays(request)),
        ("how", request.Chosen.SampleHow is { } how ? $" ({how})" : ""),
        ("decides", request.Chosen.TestDecides is { } kinds ? $" It decides on {kinds}." : ""),
        ("late", request.Chosen.LateTestDecides ?? ""),
        ("dressing", ""),
        ("apart", request.Chosen.HasSeveralFertilizers ? ", each product by itself" : ""),
        ("thin", request.Chosen.ThickenBelow is { } below ? Amounts.Print(below, 1) : "half"),
        ("published", request.Chosen.SeedingDates is { } dates ? $" (published days: {dates})" : ""),
    ];

    private static string Lower(CropKind? kind) => kind?.ShortName.ToLowerInvariant() ?? "";

    private static string LabelDays(SeasonRequest request) =>
        request.Weeds?.LabelDays is { } days ? CalendarText.Count(days) : "its own number of";

    private static string DaysBetween(int low, int high) =>
        low == high ? CalendarText.Count(low) : $"{CalendarText.Count(low)} to {CalendarText.Count(high)}";

    private static string Sentence(string? words) =>
        string.IsNullOrWhiteSpace(words) ? ""
        : words.EndsWith('.') ? words
        : $"{words}.";
}
