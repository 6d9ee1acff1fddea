namespace PlotAgronomy.Seeds;

/// <summary>What a sowing is for; it decides which seeds count as alive.</summary>
public enum SeedUse
{
    /// <summary>An annual for one season: seed that does not come up this season is lost.</summary>
    OneSeason,

    /// <summary>A perennial, or an annual that is to reseed: hard seed comes up later.</summary>
    PerennialOrReseeding,

    /// <summary>A native grass: dormant seed comes up after winter.</summary>
    NativeGrass,
}
