using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>What a field may hold, as the schema and the page say it.</summary>
internal abstract class PlanValue
{
    /// <summary>The part of the file that it is made of; null for a plain value.</summary>
    internal virtual IPlanDefinition? Definition => null;

    /// <summary>Whether several of them stand in a list.</summary>
    internal virtual bool IsList => false;

    /// <summary>As the page says it.</summary>
    internal abstract string InWords { get; }

    /// <summary>As the page says it behind "list of".</summary>
    internal virtual string InListWords => InWords;

    /// <summary>Writes its rules into an object of the schema.</summary>
    internal abstract void Describe(Utf8JsonWriter schema);
}

/// <summary>What a field may hold: how it is checked and read, and how it is written.</summary>
/// <typeparam name="TRead">What it is read into.</typeparam>
/// <typeparam name="TWrite">What it is written from; mostly the same.</typeparam>
internal abstract class PlanValue<TRead, TWrite> : PlanValue
{
    /// <summary>Reads a value, or reports at its place what is wrong with it.</summary>
    internal abstract bool TryRead(PlanNode node, PlanPart at, [MaybeNullWhen(false)] out TRead value);

    /// <summary>The value as it stands in a file, or null and a refusal when a file has no word for it.</summary>
    internal abstract PlanNode? Write(TWrite value, string path, List<PlanProblem> refusals);
}

/// <summary>A value that is written from what it is read into.</summary>
internal abstract class PlanValue<T> : PlanValue<T, T>
{
    /// <summary>The same value as another type; what that type refuses is reported at the value's place.</summary>
    internal PlanValue<TOther> As<TOther>(Func<T, TOther> there, Func<TOther, T> back) =>
        new PlanMapped<T, TOther>(this, there, back);
}

/// <summary>A value of the file that becomes another type.</summary>
internal sealed class PlanMapped<TFile, T>(PlanValue<TFile> file, Func<TFile, T> there, Func<T, TFile> back) : PlanValue<T>
{
    internal override IPlanDefinition? Definition => file.Definition;

    internal override bool IsList => file.IsList;

    internal override string InWords => file.InWords;

    internal override void Describe(Utf8JsonWriter schema) => file.Describe(schema);

    internal override bool TryRead(PlanNode node, PlanPart at, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        return file.TryRead(node, at, out var found) && at.TryStep(node, () => there(found), out value);
    }

    internal override PlanNode? Write(T value, string path, List<PlanProblem> refusals) =>
        file.Write(back(value), path, refusals);
}
