using System.Collections.Immutable;

namespace PlotAgronomy.Blends;

/// <summary>Which kinds would fill the gaps of a stand.</summary>
public static class SeasonAdditions
{
    /// <summary>What one added kind would improve, best first: most seasons newly covered, then most of what is lacking filled,
    /// then the name.</summary>
    /// <param name="coverage">Coverage of the stand as it is.</param>
    /// <param name="candidates">Kinds to try; those without ratings are passed over.</param>
    /// <param name="share">Share of a full stand each would be added at; finite, above 0.</param>
    /// <returns>The kinds that improve anything.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share not above 0, NaN or infinite.</exception>
    public static ImmutableArray<SeasonAddition> BestAdditions(
        this SeasonCoverage coverage,
        IEnumerable<CropKind> candidates,
        double share
    )
    {
        ArgumentNullException.ThrowIfNull(coverage);
        ArgumentNullException.ThrowIfNull(candidates);
        Guard.Above(share, 0, "of a full stand");
        return
        [
            .. candidates
                .Where(k => k.Seasons is not null)
                .Select(k => KindShare.FromShare(k, share))
                .Select(added => new SeasonAddition
                {
                    Added = added,
                    Before = coverage,
                    After = SeasonCoverage.For(coverage.Stand.Add(added), coverage.ShareWanted),
                })
                .Where(a => a.Filled > 0)
                .OrderByDescending(a => a.SeasonsGained.Length)
                .ThenByDescending(a => a.Filled)
                .ThenBy(a => a.Added.Kind.Id, StringComparer.Ordinal),
        ];
    }
}
