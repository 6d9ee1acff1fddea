using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Records;

/// <summary>A stand of perennial clover that grass has taken over: its roots left the nitrogen that the grass lives on.</summary>
internal static class OldClover
{
    private const string Grass = "grass";

    private static Fraction TakesOver => Fraction.FromPercent(RecordConstants.All["grass-takes-over"]);

    /// <summary>By the last look at its weeds in the year before a day; none where something else was sown since.</summary>
    internal static IEnumerable<Suggestion> On(PlotBook book, string plot, DateOnly on)
    {
        var seen = book.Of<WeedEntry>(plot)
            .LastOrDefault(w =>
                w.On <= on && w.On.AddYears(1) > on && w.Seen.Contains(Grass, StringComparison.OrdinalIgnoreCase)
            );
        var sown = book.Of<SowingEntry>(plot).LastOrDefault(s => s.On <= on);
        if (
            seen?.Cover is not { } cover
            || Tolerance.IsBelow(cover.Value, TakesOver.Value)
            || sown?.Kinds.FirstOrDefault(IsClover) is not { } clover
            || sown.On.AddYears((int)RecordConstants.All["old-clover-years"]) > seen.On
        )
        {
            yield break;
        }

        yield return new(
            FindingCatalog.Create(
                RecordCodes.OldClover,
                ("kind", clover.ShortName),
                ("plot", plot),
                ("year", ExactText.Of(sown.On.Year)),
                ("cover", Amounts.Print(cover, 0)),
                ("date", FieldWriter.Of(seen.On))
            ),
            [sown, seen],
            [clover]
        );
    }

    /// <summary>Legumes that stand for years.</summary>
    private static bool IsClover(CropKind kind) => kind.IsLegume && kind.LifeCycle == LifeCycle.Perennial;
}
