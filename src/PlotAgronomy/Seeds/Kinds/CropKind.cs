using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy;

/// <summary>What is sown, in the seed law's word: ladino and white Dutch are two kinds of one species.</summary>
/// <remarks>Every group of figures names its sources and how well they are known. To change one, write
/// <c>kind with { SeedCount = mine }</c> and give it to <see cref="KindCatalog.With"/>.</remarks>
/// <example>
/// <code>
/// CropKind clover = KindCatalog.Standard.Find("crimson clover");
/// Console.WriteLine($"{clover.CommonName} ({clover.ScientificName}), {clover.Family}");
/// // Crimson clover (Trifolium incarnatum), Fabaceae
/// Console.WriteLine(clover.RequireSeedCount());
/// // 120,000-150,000 seeds per lb, typically 149,760
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record CropKind
{
    /// <summary>Gets the stable id, such as <c>ladino-clover</c>.</summary>
    public required string Id
    {
        get;
        init => field = Guard.NotNull(value, nameof(Id));
    }

    /// <summary>Gets the common name. Changing it makes it the short name too: name the short one after it.</summary>
    public required string CommonName
    {
        get;
        init
        {
            field = Guard.NotNull(value, nameof(CommonName));
            ShortName = value;
        }
    }

    /// <summary>Gets the name without remarks, for sentences: <c>Spring oats</c>. No two published kinds share one; a kind of the
    /// user's own goes by its common name unless a short one is given.</summary>
    public string ShortName
    {
        get;
        init => field = Guard.NotNull(value, nameof(ShortName));
    } = "";

    /// <summary>Gets the scientific name without its author.</summary>
    public required string ScientificName
    {
        get;
        init => field = Guard.NotNull(value, nameof(ScientificName));
    }

    /// <summary>Gets other names of the trade: market classes, types, older names.</summary>
    public ImmutableArray<string> OtherNames
    {
        get;
        init => field = Guard.Listed(value, nameof(OtherNames));
    } = [];

    /// <summary>Gets a remark on the name, or null.</summary>
    public string? TaxonomyNote { get; init; }

    /// <summary>Gets the plant family.</summary>
    public required string Family
    {
        get;
        init => field = Guard.NotNull(value, nameof(Family));
    }

    /// <summary>Gets what it does in a stand.</summary>
    public required FunctionalGroup Group { get; init; }

    /// <summary>Gets the season in which it grows.</summary>
    public required GrowingSeason GrowingSeason { get; init; }

    /// <summary>Gets how long a sowing lives.</summary>
    public required LifeCycle LifeCycle { get; init; }

    /// <summary>Gets the life cycle in words, or null.</summary>
    public string? LifeCycleNote { get; init; }

    /// <summary>Gets a value indicating whether the seed is chaffy: it bridges in a hopper and needs a carrier or a special
    /// box.</summary>
    public bool IsChaffy { get; init; }

    /// <summary>Gets a value indicating whether a tag must give its dormant seed (7 CFR 201.57a, SEED-S19).</summary>
    public bool TagGivesDormantSeed { get; init; }

    /// <summary>Gets the seed count; null when no figure good enough is known: count the lot.</summary>
    public SeedCount? SeedCount { get; init; }

    /// <summary>Gets the weight of a bushel, or null.</summary>
    public BushelWeight? BushelWeight { get; init; }

    /// <summary>Gets the rates, or null.</summary>
    public FullStandRates? Rates { get; init; }

    /// <summary>Gets the planting depth, or null.</summary>
    public PlantingDepth? Depth { get; init; }

    /// <summary>Gets the soil temperatures for germination, or null.</summary>
    public GerminationTemperature? Germination { get; init; }

    /// <summary>Gets the days from a moist planting at a suitable temperature to emergence, or null.</summary>
    public DayRange? Emergence { get; init; }

    /// <summary>Gets the days to the first worthwhile forage, or null.</summary>
    public DayRange? UsableForage { get; init; }

    /// <summary>Gets the days from planting to seed, bulb or full bloom, or null.</summary>
    public DayRange? Maturity { get; init; }

    /// <summary>Gets the pH it stands, or null.</summary>
    public PhTolerance? Ph { get; init; }

    /// <summary>Gets the drainage it stands, or null.</summary>
    public DrainageTolerance? Drainage { get; init; }

    /// <summary>Gets the cold it stands, or null.</summary>
    public Hardiness? Hardiness { get; init; }

    /// <summary>Gets the nitrogen it fixes; null for kinds that fix none.</summary>
    public NitrogenFixation? Nitrogen { get; init; }

    /// <summary>Gets the inoculant group; null for kinds that need none.</summary>
    public InoculantGroup? InoculantGroup { get; init; }

    /// <summary>Gets the use by season, or null.</summary>
    public SeasonalUse? Seasons { get; init; }

    /// <summary>Gets a remark on its nutrient needs, or null.</summary>
    public KindNote? NutrientNote { get; init; }

    /// <summary>Gets the cautions in words, or null.</summary>
    public KindNote? Caution { get; init; }

    /// <summary>Gets the hazards a program should raise.</summary>
    public ImmutableArray<KindHazard> Hazards
    {
        get;
        init => field = Guard.Listed(value, nameof(Hazards));
    } = [];

    /// <summary>Gets where sources disagree on this kind, what to use and why.</summary>
    public ImmutableArray<KindNote> Disagreements
    {
        get;
        init => field = Guard.Listed(value, nameof(Disagreements));
    } = [];

    /// <summary>Gets a value indicating whether the user added or changed this kind.</summary>
    public bool IsUsersOwn { get; internal init; }

    /// <summary>Gets a value indicating whether it is a legume.</summary>
    public bool IsLegume => Group == FunctionalGroup.Legume;

    /// <summary>The seed count, for a sum that cannot do without.</summary>
    /// <returns>The count.</returns>
    /// <exception cref="InvalidOperationException">The kind has none.</exception>
    public SeedCount RequireSeedCount() =>
        SeedCount
        ?? throw new InvalidOperationException(
            $"No seed count good enough is known for {ShortName}: weigh and count a sample of the lot and set SeedCount."
        );

    /// <summary>The published rates for a full stand of this kind alone.</summary>
    /// <param name="method">Way of sowing; see <see cref="FullStandRates.For"/>.</param>
    /// <returns>The range.</returns>
    /// <exception cref="InvalidOperationException">None is published for this way of sowing.</exception>
    public PureLiveSeedRateRange FullRange(SowingMethod method) =>
        Rates?.For(method)
        ?? throw new InvalidOperationException(
            $"No full rate is published for {ShortName}, {SowingMethods.InWords(method)}: give your own in Rates."
        );

    /// <summary>The common name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => CommonName;
}
