using System.Collections.Immutable;

namespace PlotAgronomy.Blends;

/// <content>Which kinds would fill the gaps of a stand.</content>
public sealed partial class SeasonCoverage
{
    /// <summary>What one added kind would improve, best first: most seasons newly covered, then most of what is lacking filled,
    /// then the name.</summary>
    /// <param name="candidates">Kinds to try; those without ratings are passed over.</param>
    /// <param name="share">Share of a full stand each would be added at; finite, above 0.</param>
    /// <returns>The kinds that improve anything.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share not above 0, NaN or infinite.</exception>
    public ImmutableArray<SeasonAddition> BestAdditions(IEnumerable<CropKind> candidates, double share)
    {
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
                    Before = this,
                    After = SeasonCoverage.For(Stand.Add(added), ShareWanted),
                })
                .Where(a => a.Filled > 0)
                .OrderByDescending(a => a.SeasonsGained.Length)
                .ThenByDescending(a => a.Filled)
                .ThenBy(a => a.Added.Kind.Id, StringComparer.Ordinal),
        ];
    }
}
