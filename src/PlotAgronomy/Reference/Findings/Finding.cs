using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <summary>A remark carried on a result to the final sheet. Its code is stable and never renamed.</summary>
/// <example>
/// <code>
/// var report = new SoilReport { Laboratory = "state", WaterPh = WaterPh.FromValue(6.2), SoilClass = SoilClass.Mineral };
/// foreach (var finding in LimeMethod.Oregon.NeedFor(report, targetPh: 6.4).Findings)
/// {
///     Console.WriteLine($"{finding.Severity}: {finding.Code}");
/// }
/// // Warning: lime-reading-missing
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class Finding : IEquatable<Finding>
{
    internal static readonly EnumWords<FindingSeverity> SeverityWords = EnumWords<FindingSeverity>.FromNames();

    private readonly FindingTemplate template;
    private readonly string? about;

    internal Finding(FindingTemplate template, ImmutableArray<FindingValue> values, string? about = null)
    {
        this.template = template;
        this.about = about;
        Values = values;
    }

    /// <summary>Gets the stable code, such as <c>lime-over-target</c>.</summary>
    public string Code => template.Code;

    /// <summary>Gets how serious it is.</summary>
    public FindingSeverity Severity => template.Severity;

    /// <summary>Gets what it is about, such as a kind, a lot or a nutrient; null where it is the whole.</summary>
    public string? Subject => about ?? template.SubjectIn(Values);

    /// <summary>Gets the values it was made with, by the names of their places in the text.</summary>
    public ImmutableArray<FindingValue> Values { get; }

    /// <summary>Gets the remark in English, with the numbers it is about. It is put together when asked for.</summary>
    public string Text
    {
        get
        {
            string text = template.TextWith(Values);
            return about is null ? text : $"{about}: {text}";
        }
    }

    /// <summary>Gets the source of the caution.</summary>
    public Source Source => template.Source;

    /// <summary>Orders findings, most serious first, keeping the given order within a severity.</summary>
    /// <param name="findings">Findings in any order.</param>
    /// <returns>The ordered findings, each only once.</returns>
    public static ImmutableArray<Finding> InOrder(IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        return
        [
            .. findings
                .Select(f => f ?? throw new ArgumentException("Must hold no null.", nameof(findings)))
                .Distinct()
                .OrderByDescending(f => f.Severity),
        ];
    }

    /// <summary>Says whether this is the same remark about the same thing with the same values.</summary>
    /// <param name="other">Another finding.</param>
    /// <returns>True when it is.</returns>
    public bool Equals(Finding? other) =>
        other is not null && Code == other.Code && about == other.about && Values.SequenceEqual(other.Values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Finding);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Code, about, Values.Length);

    /// <summary>Text such as <c>caution lime-over-target: ...</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{SeverityWords[Severity]} {Code}: {Text}";

    /// <summary>Code and all values but that of the subject; what is the same here is said once.</summary>
    internal string WithoutSubject =>
        $"{Code}|{string.Join('|', Values.Where(v => about is not null || v.Name != template.Subject).Select(v => v.Text))}";

    /// <summary>The same about the subjects of several such findings.</summary>
    internal Finding AboutAll(IReadOnlyCollection<Finding> alike)
    {
        string[] subjects = [.. alike.Select(f => f.Subject).OfType<string>().Distinct()];
        return about is not null ? About(string.Join(", ", subjects))
            : subjects.Length == 0 ? this
            : new(template, [.. Values.Select(v => v.Name == template.Subject ? new(v.Name, SentenceList.And(subjects)) : v)]);
    }

    /// <summary>The same remark about something it does not name itself, such as one lot of several.</summary>
    internal Finding About(string subject) => new(template, Values, subject);
}
