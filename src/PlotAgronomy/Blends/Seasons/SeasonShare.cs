using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>What a stand offers in one season.</summary>
public sealed class SeasonShare
{
    /// <summary>Gets the season.</summary>
    public required SeasonOfUse Season { get; init; }

    /// <summary>Gets the kinds rated high or medium in it.</summary>
    public required ImmutableArray<CropKind> Kinds { get; init; }

    /// <summary>Gets their shares of a full stand together, a pure number.</summary>
    public required double Share { get; init; }

    /// <summary>Gets the share that covers a season, a pure number.</summary>
    public required double ShareWanted { get; init; }

    /// <summary>Gets a value indicating whether the season is covered; the share wanted itself is enough.</summary>
    public bool IsCovered => !Tolerance.IsBelow(Share, ShareWanted);

    /// <summary>Gets the share lacking, a pure number; 0 when the season is covered.</summary>
    public double Lacking => IsCovered ? 0 : ShareWanted - Share;
}
