using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>What is known about mixing two materials.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class MixCompatibility
{
    private static readonly Table<MixCompatibility> Rules = new("Fertilizers/Data/compatibility.csv", FromRow);

    private MixCompatibility(FertilizerSubstance first, FertilizerSubstance second, MixRule rule, string reason, Origin origin) =>
        (First, Second, Rule, Reason, Origin) = (first, second, rule, reason, origin);

    /// <summary>Gets every rule, in the order of the table.</summary>
    public static ImmutableArray<MixCompatibility> All => Rules.Rows;

    /// <summary>Gets the one material.</summary>
    public FertilizerSubstance First { get; }

    /// <summary>Gets the other.</summary>
    public FertilizerSubstance Second { get; }

    /// <summary>Gets the rule.</summary>
    public MixRule Rule { get; }

    /// <summary>Gets the reason in words.</summary>
    public string Reason { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets how well the rule is known to stand there.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Looks up two materials, in either order.</summary>
    /// <param name="first">One material.</param>
    /// <param name="second">Another.</param>
    /// <returns>The rule, or null when none is known: spread them in separate passes.</returns>
    public static MixCompatibility? Between(FertilizerSubstance first, FertilizerSubstance second)
    {
        Guard.Defined(first);
        Guard.Defined(second);
        return Rules.Rows.FirstOrDefault(r =>
            (r.First == first && r.Second == second) || (r.First == second && r.Second == first)
        );
    }

    /// <summary>Cautions for materials that are to be mixed.</summary>
    /// <param name="substances">Materials; each pair is looked up.</param>
    /// <returns>The cautions, most serious first.</returns>
    public static ImmutableArray<Finding> Cautions(IReadOnlyCollection<FertilizerSubstance> substances)
    {
        ArgumentNullException.ThrowIfNull(substances);
        var kinds = substances.Distinct().Order().ToList();
        var findings = new List<Finding>();
        for (int i = 0; i < kinds.Count; i++)
        {
            for (int j = i + 1; j < kinds.Count; j++)
            {
                if (Between(kinds[i], kinds[j]) is { Rule: not MixRule.Compatible } rule)
                {
                    string first = FertilizerWords.Substances[rule.First];
                    string second = FertilizerWords.Substances[rule.Second];
                    string code = rule.Rule == MixRule.Never ? FertilizerCodes.MixNever : FertilizerCodes.MixSameDay;
                    findings.Add(FindingCatalog.Create(code, ("first", first), ("second", second), ("reason", rule.Reason)));
                    findings.AddRange(
                        rule.Status == DataStatus.Memory
                            ? [MemoryGate.FindingFor($"mixing {first} and {second}", rule.Origin)]
                            : []
                    );
                }
            }
        }

        return Finding.InOrder(findings);
    }

    private static MixCompatibility FromRow(CsvRow row) =>
        new(
            row.Choice<FertilizerSubstance>("first"),
            row.Choice<FertilizerSubstance>("second"),
            row.Choice<MixRule>("rule"),
            row.Text("reason"),
            row.Origin()
        );

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{First} with {Second}: {Rule}";
}
