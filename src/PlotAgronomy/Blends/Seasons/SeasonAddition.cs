using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>What one kind, added to a stand, would improve.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonAddition
{
    internal SeasonAddition() { }

    /// <summary>Gets the kind and the share it is added at.</summary>
    public required KindShare Added { get; init; }

    /// <summary>Gets the coverage without it.</summary>
    public required SeasonCoverage Before { get; init; }

    /// <summary>Gets the coverage with it.</summary>
    public required SeasonCoverage After { get; init; }

    /// <summary>Gets the seasons covered only with it.</summary>
    public ImmutableArray<SeasonOfUse> SeasonsGained =>
        [.. After.Seasons.Zip(Before.Seasons).Where(x => x.First.IsCovered && !x.Second.IsCovered).Select(x => x.First.Season)];

    /// <summary>Gets how much of the shares lacking it fills, a pure number.</summary>
    public double Filled => Before.Lacking - After.Lacking;

    /// <summary>The kind and the seasons gained.</summary>
    /// <returns>Text such as <c>0.25 of a full stand of Cereal rye: late winter (December to February)</c>.</returns>
    public override string ToString()
    {
        string gain = SeasonsGained.IsEmpty
            ? "fills part of a gap"
            : string.Join(", ", SeasonsGained.Select(s => SeasonalUse.SeasonWords[s]));
        return $"{Added}: {gain}";
    }
}
