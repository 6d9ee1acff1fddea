namespace PlotAgronomy.Seeds;

/// <summary>Published broadcast rates, which are for a packed seedbed, carried to seed that is not covered there.</summary>
internal static class SurfaceRates
{
    /// <summary>Frost-seeded: from as much to a tenth more. A full stand takes the tenth, for advice is to sow at least as much
    /// and preferably more (SEED-S57).</summary>
    internal static PureLiveSeedRateRange FrostSeeded(PureLiveSeedRateRange broadcast)
    {
        double more = SeedConstants.All["frost-factor-high"];
        return broadcast.SownBy(SowingMethod.FrostSeeded, 1, more, more, SeedConstants.All.Find("frost-factor-high").Origin);
    }

    /// <summary>Under a standing crop that is rolled or mown over it: the factor of seed only dragged or rolled over that of seed
    /// covered and rolled for a full stand, that of rough ground at the most.</summary>
    internal static PureLiveSeedRateRange UnderCover(PureLiveSeedRateRange broadcast)
    {
        double covered = SeedConstants.All["broadcast-factor-covered"];
        double rolled = SeedConstants.All["broadcast-factor-dragged"] / covered;
        double rough = SeedConstants.All["broadcast-factor-rough"] / covered;
        var origin = SeedConstants.All.Find("broadcast-factor-dragged").Origin;
        return broadcast.SownBy(SowingMethod.BroadcastUnderCover, 1, rolled, rough, origin);
    }
}
