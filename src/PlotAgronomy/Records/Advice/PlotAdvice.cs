using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Records;

/// <summary>What stands, browse and families of a plot suggest.</summary>
internal static class PlotAdvice
{
    private const int KindsNamed = 3;

    internal static IEnumerable<Suggestion> FailedTwice(PlotBook book, string plot, DateOnly on) =>
        FailedKinds(book, plot, on)
            .Select(f => new Suggestion(
                FindingCatalog.Create(
                    RecordCodes.FailedTwice,
                    ("kind", f.Kind.ShortName),
                    ("plot", plot),
                    ("dates", string.Join(" and ", f.Stands.Select(s => s.SownOn).Distinct().Order().Select(FieldWriter.Of)))
                ),
                [.. f.Stands.Select(s => s.Count)],
                [f.Kind]
            ));

    internal static IEnumerable<Suggestion> FedNothing(PlotBook book, string plot, KindCatalog kinds)
    {
        var failed = FailedKinds(book, plot, DateOnly.MaxValue).Select(f => f.Kind.Id).ToHashSet();
        foreach (int month in BrowseByMonth.Of(book, plot).MonthsThatFedNothing)
        {
            var season = SeasonOf(month);
            ImmutableArray<CropKind> feeding =
            [
                .. kinds.Kinds.Where(k => k.Seasons?.In(season) == UseRating.High && !failed.Contains(k.Id)),
            ];
            yield return new(
                FindingCatalog.Create(
                    RecordCodes.FedNothing,
                    ("plot", plot),
                    ("month", CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month)),
                    ("kinds", string.Join(", ", feeding.Take(KindsNamed).Select(k => k.ShortName))),
                    ("season", SeasonalUse.SeasonWords[season])
                ),
                [.. book.Of<BrowseEntry>(plot).Where(b => b.On.Month == month)],
                feeding
            );
        }
    }

    /// <summary>Families that were sown in each of the last years in which anything was.</summary>
    internal static IEnumerable<Suggestion> Rotation(PlotBook book, string plot, DateOnly on)
    {
        int running = (int)RecordConstants.All["family-years"];
        var years = book.Of<SowingEntry>(plot)
            .Where(s => s.On <= on)
            .GroupBy(s => s.On.Year)
            .OrderByDescending(y => y.Key)
            .Take(running)
            .Select(y => (Year: y.Key, Sown: y.ToList()))
            .OrderBy(y => y.Year)
            .ToList();
        return years.Count < running || years[^1].Year - years[0].Year >= running
            ? []
            : RotatedFamily
                .All.Where(f => years.All(y => y.Sown.Any(s => s.Kinds.Any(f.Holds))))
                .Select(f => new Suggestion(
                    FindingCatalog.Create(
                        RecordCodes.Rotate,
                        ("family", f.Words),
                        ("plot", plot),
                        ("years", string.Join(" and ", years.Select(y => ExactText.Of(y.Year))))
                    ),
                    [.. years.SelectMany(y => y.Sown).Where(s => s.Kinds.Any(f.Holds))],
                    []
                )
                {
                    Family = f,
                });
    }

    /// <summary>The kinds that failed on the plot more than once.</summary>
    internal static HashSet<string> FailedIds(PlotBook book, string plot, DateOnly on) =>
        [.. FailedKinds(book, plot, on).Select(f => f.Kind.Id)];

    internal static SeasonOfUse SeasonOf(int month) =>
        month switch
        {
            >= 3 and <= 5 => SeasonOfUse.Spring,
            >= 6 and <= 8 => SeasonOfUse.Summer,
            9 => SeasonOfUse.EarlyFall,
            10 or 11 => SeasonOfUse.MidFall,
            _ => SeasonOfUse.LateWinter,
        };

    private static IEnumerable<(CropKind Kind, List<StandOutcome> Stands)> FailedKinds(PlotBook book, string plot, DateOnly on) =>
        StandOutcome
            .All(book, plot)
            .Where(a => a.TryGet(out _))
            .Select(a => a.Value)
            .Where(s => s.Verdict == StandVerdict.Failed && s.Count.Kind is not null && s.Count.On <= on)
            .GroupBy(s => s.Count.Kind!.Id)
            .Select(g => (g.First().Count.Kind!, Stands: g.ToList()))
            .Where(f => f.Stands.Select(s => s.SownOn).Distinct().Count() >= RecordConstants.All["failures-to-tell"]);
}
