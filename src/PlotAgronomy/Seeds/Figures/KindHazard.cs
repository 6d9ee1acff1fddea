namespace PlotAgronomy.Seeds;

/// <summary>A hazard to look up before a kind is sown or grazed. It only warns: state lists change and govern.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindHazard
{
    /// <summary>Hazards as a sentence begins with them.</summary>
    internal static readonly EnumWords<HazardType> Openings = new(
        (HazardType.PrussicAcid, "Prussic acid"),
        (HazardType.Nitrate, "Nitrate"),
        (HazardType.Bloat, "Bloat"),
        (HazardType.Toxicity, "Poison"),
        (HazardType.NoxiousListing, "Noxious listing"),
        (HazardType.Allelopathy, "Residue")
    );

    /// <summary>Gets the hazard.</summary>
    public required HazardType Type { get; init; }

    /// <summary>Gets how strong it is, in the words of the source.</summary>
    public required string Level
    {
        get;
        init => field = Guard.NotNull(value, nameof(Level));
    }

    /// <summary>Gets the rule to follow.</summary>
    public required string Rule
    {
        get;
        init => field = Guard.NotNull(value, nameof(Rule));
    }

    /// <summary>Gets the sources.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    internal static IEnumerable<KindHazard> Of(KindObservations kind) => kind.EachMethod("hazard").Select(Of);

    /// <summary>The level stands before the rule in one note, parted by a colon.</summary>
    private static KindHazard Of(KindObservation hazard)
    {
        var (level, rule) = hazard.TwoWords();
        return new()
        {
            Type = hazard.MethodOf<HazardType>(),
            Level = level,
            Rule = rule,
            Evidence = hazard.Origin,
        };
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Type}: {Level}";
}
