using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>In which of the five seasons a stand feeds, and which it leaves bare.</summary>
/// <remarks>A season is covered when the kinds rated high or medium in it hold together at least a stated share of a full stand;
/// 0.25 by common practice. The ratings are mostly recollection: use them to see gaps, not to rank kinds. It does not consider
/// when the stand was sown: a perennial feeds little before its second year.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class SeasonCoverage : IWorkedResult
{
    private SeasonCoverage(ImmutableArray<KindShare> stand, double shareWanted)
    {
        Stand = stand;
        ShareWanted = shareWanted;
        Seasons = SharesOf(stand, shareWanted);
    }

    /// <summary>Gets the seasons, in the order of the year from spring.</summary>
    public ImmutableArray<SeasonShare> Seasons { get; }

    /// <summary>Gets the share of a full stand that covers a season, a pure number.</summary>
    public double ShareWanted { get; }

    internal ImmutableArray<KindShare> Stand { get; }

    /// <summary>Gets the number of seasons covered.</summary>
    internal int Covered => Seasons.Count(s => s.IsCovered);

    /// <summary>Gets the shares lacking over all seasons, a pure number.</summary>
    public double Lacking => Seasons.Sum(s => s.Lacking);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            Seasons
                .Where(s => !s.IsCovered)
                .Select(Gap)
                .Concat(MemoryNotes.For("the seasons of use", Stand.Select(k => (k.Kind, k.Kind.Seasons?.Evidence))))
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. Stand
                .SelectMany(k => k.Kind.Seasons?.Evidence.Sources ?? [])
                .Concat(BlendConstants.All.Find("season-share").Origin.Sources)
                .Distinct(),
        ];

    /// <summary>Coverage of a stand.</summary>
    /// <param name="stand">Kinds with their shares of a full stand, sown and standing.</param>
    /// <param name="shareWanted">Share of a full stand that covers a season; above 0, at most 1; null takes the 0.25 of
    /// practice.</param>
    /// <returns>The coverage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share outside its range, NaN or infinite.</exception>
    public static SeasonCoverage For(IEnumerable<KindShare> stand, double? shareWanted = null)
    {
        ArgumentNullException.ThrowIfNull(stand);
        return new(
            [.. stand],
            Guard.AboveUpTo(shareWanted ?? BlendConstants.All["season-share"], 0, 1, "of a full stand", nameof(shareWanted))
        );
    }

    /// <summary>Coverage of a blend, alone or on top of what stands already.</summary>
    /// <param name="blend">Blend.</param>
    /// <param name="standing">Kinds that stand on the plot already.</param>
    /// <returns>The coverage, with the 0.25 of practice.</returns>
    public static SeasonCoverage For(Blend blend, params IEnumerable<KindShare> standing)
    {
        ArgumentNullException.ThrowIfNull(blend);
        ArgumentNullException.ThrowIfNull(standing);
        KindShare[] listed = [.. standing];
        Guard.WithoutNulls(listed, nameof(standing));
        return For(blend.KindShares.Concat(listed));
    }

    /// <summary>Says whether a season is covered.</summary>
    /// <param name="season">Season.</param>
    /// <returns>True when it is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown season.</exception>
    internal bool Covers(SeasonOfUse season) => Seasons[(int)Guard.Defined(season)].IsCovered;

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Seasons.Select(Line)];

    private static ImmutableArray<SeasonShare> SharesOf(ImmutableArray<KindShare> stand, double shareWanted)
    {
        var shares = ImmutableArray.CreateBuilder<SeasonShare>(SeasonFeeding.Seasons.Length);
        foreach (var season in SeasonFeeding.Seasons)
        {
            double share = 0;
            foreach (var member in stand)
            {
                share += SeasonFeeding.Feeds(member.Kind, season) ? member.ShareOfFullStand : 0;
            }

            shares.Add(new SeasonShare(stand, season, share, shareWanted));
        }

        return shares.MoveToImmutable();
    }

    private static WorkedLine Line(SeasonShare season)
    {
        string kinds = season.Kinds.IsEmpty ? "no kind" : string.Join(" + ", season.Kinds.Select(k => k.ShortName));
        string verdict = season.IsCovered ? "covered" : "a gap";
        return BlendFormulas
            .Sum(
                $"Share in {SeasonalUse.SeasonWords[season.Season]}, kinds rated high or medium",
                $"{kinds} = {Amounts.Print(season.Share, 3)}, wanted {Amounts.Print(season.ShareWanted, 3)}: {verdict}"
            )
            .From(BlendConstants.All.Find("season-share").Origin);
    }

    private static Finding Gap(SeasonShare season) =>
        FindingCatalog.Create(
            season.Kinds.IsEmpty ? BlendCodes.SeasonBare : BlendCodes.SeasonThin,
            season.Kinds.IsEmpty
                ? [("season", SeasonalUse.SeasonWords[season.Season])]
                :
                [
                    ("season", SeasonalUse.SeasonWords[season.Season]),
                    ("kinds", StandNames.Of(season.Kinds)),
                    ("share", Amounts.Print(season.Share, 2)),
                    ("wanted", Amounts.Print(season.ShareWanted, 2)),
                ]
        );

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
