using PlotAgronomy.Seeds;

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
        ("work", "work it in"),
        ("limed", request.Chosen.TestIfLimedBy is { } by ? $" Leave it out unless lime went on by {CalendarText.Date(by)}." : ""),
        ("stands", request.SmotherStands ? " that stands there" : ""),
        ("last", request.SowingDays is { } days && days.From < days.To ? $", not later than {CalendarText.Date(days.To)}" : ""),
        ("unweighed", request.Chosen.IsUnweighed ? " (weigh it out once the questions are answered)" : ""),
        ("nurse", request.Kinds.Any(k => k.Group == FunctionalGroup.Cereal) ? " and nurse grain" : ""),
        ("later", Later(request)),
        ("instead", Lower(request.Chosen.CoverInstead)),
        ("boron", request.Chosen.BringsBoron ? " Its boron is half of the one dose, not a second one." : ""),
        ("for", For(request)),
        ("frozen", ""),
        ("apart", request.Chosen.HasSeveralFertilizers ? ", each product by itself" : ""),
        ("thin", request.Chosen.ThickenBelow is { } below ? Amounts.Print(below, 1) : "half"),
        ("published", request.Chosen.SeedingDates is { } dates ? $" (published days: {dates})" : ""),
    ];

    private static string Later(SeasonRequest request) =>
        request.NextSampleOn is not null ? ""
        : request.Chosen.NextSampleBy is { } by ? $", in {CalendarText.Count(by.Year)} at the latest"
        : request.Chosen.NextSample is null ? ", a year later at the latest"
        : "";

    /// <summary>Nitrogen on a stand that legumes lead feeds the others.</summary>
    private static string For(SeasonRequest request) =>
        request.Chosen.LegumesLead && request.Kinds.Where(k => !k.IsLegume).ToList() is { Count: > 0 } others
            ? $" (for {CalendarText.Names(others)}: the legumes make their own, and it may be left out)"
            : "";

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
