using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>What a stand offers in one season.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonShare
{
    private readonly ImmutableArray<KindShare> stand;

    internal SeasonShare(ImmutableArray<KindShare> stand, SeasonOfUse season, double share, double shareWanted)
    {
        this.stand = stand;
        Season = season;
        Share = share;
        ShareWanted = shareWanted;
    }

    /// <summary>Gets the season.</summary>
    public SeasonOfUse Season { get; }

    /// <summary>Gets the kinds rated high or medium in it.</summary>
    public ImmutableArray<CropKind> Kinds =>
        [.. stand.Select(k => k.Kind).Where(k => SeasonFeeding.Feeds(k, Season)).DistinctBy(k => k.Id)];

    /// <summary>Gets their shares of a full stand together, a pure number.</summary>
    public double Share { get; }

    /// <summary>Gets the share that covers a season, a pure number.</summary>
    public double ShareWanted { get; }

    /// <summary>Gets a value indicating whether the season is covered; the share wanted itself is enough.</summary>
    public bool IsCovered => !Tolerance.IsBelow(Share, ShareWanted);

    /// <summary>Gets the share lacking, a pure number; 0 when the season is covered.</summary>
    public double Lacking => IsCovered ? 0 : ShareWanted - Share;

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Season}: {Amounts.Print(Share, 3)}";
}
