using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>How long after its test seed may be shipped or sold: one jurisdiction's limit for one class of seed.</summary>
/// <remarks>The limit is about the sale, not about planting: old seed may be planted; test it first. Laws change: the state
/// department of agriculture says what holds today.</remarks>
public sealed class TestDateRule
{
    private static readonly Lazy<ImmutableArray<TestDateRule>> Table = new(() =>
        [
            .. CsvTable
                .Embedded(
                    "Seeds/Data/test-date-limits.csv",
                    "id",
                    "jurisdiction",
                    "applies_to",
                    "kind_ids",
                    "months",
                    "hermetic_months",
                    "counting_rule",
                    "source_id",
                    "locator",
                    "status"
                )
                .Rows.Select(FromRow),
        ]
    );

    private readonly ImmutableArray<string> kindIds;

    private TestDateRule(
        string id,
        string jurisdiction,
        string appliesTo,
        ImmutableArray<string> kindIds,
        int months,
        int? hermeticMonths,
        string countingRule,
        string sourceId
    )
    {
        this.kindIds = kindIds;
        Id = id;
        Jurisdiction = jurisdiction;
        AppliesTo = appliesTo;
        Months = months;
        HermeticMonths = hermeticMonths;
        CountingRule = countingRule;
        SourceId = sourceId;
    }

    /// <summary>Gets all rules.</summary>
    public static IReadOnlyList<TestDateRule> All => Table.Value;

    /// <summary>Gets the stable id, such as <c>federal-general</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the jurisdiction.</summary>
    public string Jurisdiction { get; }

    /// <summary>Gets the seed it applies to, in words.</summary>
    public string AppliesTo { get; }

    /// <summary>Gets the months after the month of test.</summary>
    public int Months { get; }

    /// <summary>Gets the months for hermetically sealed containers, or null when no limit is published.</summary>
    public int? HermeticMonths { get; }

    /// <summary>Gets how the jurisdiction counts, in words.</summary>
    public string CountingRule { get; }

    /// <summary>Gets the id of the source.</summary>
    public string SourceId { get; }

    /// <summary>Finds a rule.</summary>
    /// <param name="id">Id of the rule.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="KeyNotFoundException">No rule has this id.</exception>
    public static TestDateRule Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Table.Value.FirstOrDefault(r => r.Id == id)
            ?? throw new KeyNotFoundException(
                $"No test-date rule has the id '{id}'; there are: {string.Join(", ", Table.Value.Select(r => r.Id))}."
            );
    }

    /// <summary>The rule of a jurisdiction for a kind.</summary>
    /// <param name="jurisdiction">Jurisdiction as in <see cref="Jurisdiction"/>.</param>
    /// <param name="kind">Kind.</param>
    /// <returns>The rule that names the kind, or else the general one.</returns>
    /// <exception cref="KeyNotFoundException">No rule of this jurisdiction is known.</exception>
    public static TestDateRule For(string jurisdiction, CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var rules = Table
            .Value.Where(r => string.Equals(r.Jurisdiction, jurisdiction, StringComparison.OrdinalIgnoreCase))
            .ToList();
        return rules.FirstOrDefault(r => r.kindIds.Contains(kind.Id))
            ?? rules.FirstOrDefault(r => r.kindIds.IsEmpty)
            ?? throw new KeyNotFoundException(
                $"No test-date rule of '{jurisdiction}' is known; there are: {string.Join(", ", Table.Value.Select(r => r.Jurisdiction).Distinct())}."
            );
    }

    /// <summary>Last legal day.</summary>
    /// <param name="test">Month of test.</param>
    /// <param name="hermetic">Whether the container is hermetically sealed and lawful as such.</param>
    /// <returns>Last day of the month that lies the limit's months after the month of test.</returns>
    /// <exception cref="InvalidOperationException">No limit is published for sealed containers.</exception>
    /// <remarks>last day of (month of test + months); 7 CFR 201.22 (SEED-S17) and state law.</remarks>
    public DateOnly LastDay(TestMonth test, bool hermetic = false) =>
        test.LastDayOfMonthLater(
            hermetic
                ? HermeticMonths
                    ?? throw new InvalidOperationException($"{Jurisdiction} publishes no limit for sealed containers.")
                : Months
        );

    /// <summary>Looks whether a test is still current on a day.</summary>
    /// <param name="test">Month of test.</param>
    /// <param name="day">Day of shipment or sale.</param>
    /// <param name="hermetic">Whether the container is hermetically sealed and lawful as such.</param>
    /// <returns>A finding when the last legal day has passed; else null.</returns>
    /// <exception cref="InvalidOperationException">No limit is published for sealed containers.</exception>
    public Finding? Check(TestMonth test, DateOnly day, bool hermetic = false)
    {
        var last = LastDay(test, hermetic);
        return day <= last
            ? null
            : FindingCatalog.Create(
                "seed-test-old",
                ("test", test.ToString()),
                ("jurisdiction", Jurisdiction),
                ("last", last.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))
            );
    }

    private static TestDateRule FromRow(CsvRow row) =>
        new(
            row.Text("id"),
            row.Text("jurisdiction"),
            row.Text("applies_to"),
            [.. (row.TextOrNull("kind_ids") ?? "").Split('|', StringSplitOptions.RemoveEmptyEntries)],
            row.Integer("months"),
            row.TextOrNull("hermetic_months") is null ? null : row.Integer("hermetic_months"),
            row.Text("counting_rule"),
            row.SourceId()
        );
}
