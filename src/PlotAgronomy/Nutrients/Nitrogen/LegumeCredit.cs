using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Nitrogen that an earlier or standing legume leaves to what grows there next, by one publication.</summary>
public sealed class LegumeCredit
{
    private static readonly Table<LegumeCredit> Table = new("Nutrients/Data/legume-credits.csv", r => new LegumeCredit(r));

    private LegumeCredit(CsvRow row)
    {
        Id = row.Text("id");
        Legume = row.Text("previous_legume");
        Institution = row.Text("institution");
        Low = ApplicationRate.FromPoundsPerAcre(row.Number("low_lb_per_ac"));
        High = ApplicationRate.FromPoundsPerAcre(row.Number("high_lb_per_ac"));
        Condition = row.Text("condition");
        IsForExistingStand = row.YesOrNo("existing_stand");
        SourceId = row.SourceId();
        Status = row.Status();
    }

    /// <summary>Gets every published credit.</summary>
    public static ImmutableArray<LegumeCredit> All => Table.Rows;

    /// <summary>Gets the name to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the legume.</summary>
    public string Legume { get; }

    /// <summary>Gets the state or program.</summary>
    public string Institution { get; }

    /// <summary>Gets the lower figure, the one that is credited.</summary>
    public ApplicationRate Low { get; }

    /// <summary>Gets the upper figure.</summary>
    public ApplicationRate High { get; }

    /// <summary>Gets the condition it is printed with.</summary>
    public string Condition { get; }

    /// <summary>Gets whether the figure is for a legume that still stands; else for one that grew before.</summary>
    public bool IsForExistingStand { get; }

    /// <summary>Gets the id of the source.</summary>
    public string SourceId { get; }

    /// <summary>Gets how well the figure is known.</summary>
    public DataStatus Status { get; }

    /// <summary>Finds a credit by its name.</summary>
    /// <param name="id">Name such as <c>tennessee-cover</c>.</param>
    /// <returns>The credit.</returns>
    /// <exception cref="KeyNotFoundException">No credit has this name.</exception>
    public static LegumeCredit Named(string id) =>
        All.FirstOrDefault(c => c.Id == id)
        ?? throw new KeyNotFoundException(
            $"No legume credit is named '{id}'; there are {string.Join(", ", All.Select(c => c.Id))}."
        );

    /// <summary>The nitrogen to subtract for a stand: the lower figure, or nothing for a legume sown together with the
    /// crop.</summary>
    /// <param name="stand">When the legume grew.</param>
    /// <returns>The credit.</returns>
    /// <exception cref="ArgumentException">A figure for a legume that grew before is asked of a standing one, or the
    /// reverse.</exception>
    public LegumeCreditAnswer For(LegumeStand stand)
    {
        Guard.Defined(stand);
        if (stand == LegumeStand.SownTogether)
        {
            return new LegumeCreditAnswer(
                this,
                ApplicationRate.Zero,
                [FindingCatalog.Create("nutrient-legume-sown-together", ("legume", Legume))]
            );
        }

        if (IsForExistingStand != (stand == LegumeStand.Existing))
        {
            throw new ArgumentException(
                $"The credit '{Id}' is for {(IsForExistingStand ? "a legume that stands" : "a legume that grew before")}.",
                nameof(stand)
            );
        }

        return new LegumeCreditAnswer(
            this,
            Low,
            [
                .. Status == DataStatus.Memory
                    ? [MemoryGate.FindingFor($"the credit for {Legume}", SourceId)]
                    : Array.Empty<Finding>(),
                FindingCatalog.Create(
                    "nutrient-legume-credit-lower",
                    ("legume", Legume),
                    ("credit", Amounts.Print(Low.PoundsPerAcre, 4))
                ),
            ]
        );
    }

    /// <summary>Text such as <c>alfalfa, Kansas</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Legume}, {Institution}";
}
