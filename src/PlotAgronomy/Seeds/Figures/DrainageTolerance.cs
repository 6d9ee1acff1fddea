namespace PlotAgronomy.Seeds;

/// <summary>Soil drainage a kind stands.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class DrainageTolerance
{
    /// <summary>The soil survey's words for the classes; a plan file uses the same ones.</summary>
    internal static readonly EnumWords<DrainageClass> Classes = new(
        (DrainageClass.VeryPoor, "very poorly drained"),
        (DrainageClass.Poor, "poorly drained"),
        (DrainageClass.SomewhatPoor, "somewhat poorly drained"),
        (DrainageClass.ModeratelyWell, "moderately well drained"),
        (DrainageClass.Well, "well drained"),
        (DrainageClass.SomewhatExcessive, "somewhat excessively drained"),
        (DrainageClass.Excessive, "excessively drained")
    );

    private const string Figure = "drainage";

    /// <summary>Gets the wettest drainage class it stands.</summary>
    public required DrainageClass Wettest { get; init; }

    /// <summary>Gets the driest drainage class it stands.</summary>
    public required DrainageClass Driest { get; init; }

    /// <summary>Gets its tolerance of wet soil in words.</summary>
    public required string WetTolerance
    {
        get;
        init => field = Guard.NotNull(value, nameof(WetTolerance));
    }

    /// <summary>Gets its tolerance of drought in words.</summary>
    public required string DroughtTolerance
    {
        get;
        init => field = Guard.NotNull(value, nameof(DroughtTolerance));
    }

    /// <summary>Gets the sources.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    /// <summary>Says whether the kind stands a soil's drainage; both limits belong to what it stands.</summary>
    /// <param name="drainage">Drainage class of the soil.</param>
    /// <returns>True when it does.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown class.</exception>
    public bool Stands(DrainageClass drainage) => Guard.Defined(drainage) >= Wettest && drainage <= Driest;

    internal static DrainageTolerance? Of(KindObservations kind)
    {
        if (kind.Find(Figure, "wettest") is not { } wettest)
        {
            return null;
        }

        var driest = kind.Need(Figure, "driest");
        var wet = kind.Need("wet-tolerance");
        var drought = kind.Need("drought-tolerance");
        return new()
        {
            Wettest = wettest.Word<DrainageClass>(),
            Driest = driest.Word<DrainageClass>(),
            WetTolerance = wet.Words(),
            DroughtTolerance = drought.Words(),
            Evidence = KindOrigins.LeastKnownOf(wettest.Origin, driest.Origin, wet.Origin, drought.Origin),
        };
    }

    /// <summary>The wettest and the driest ground.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Wettest == Driest ? Classes[Wettest] : $"{Classes[Wettest]} to {Classes[Driest]}";
}
