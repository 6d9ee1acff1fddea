using PlotAgronomy.Map.Model;

namespace PlotAgronomy.Map.Users;

/// <summary>Finds members by what a person types: <c>Type.Member</c>, with as much of the namespace as sets it apart.</summary>
internal static class MemberFinder
{
    /// <summary>The overloads of the one member meant.</summary>
    internal static IReadOnlyList<CodeMember> Find(CodeModel model, string name)
    {
        var found = model.Members.Values
            .Where(m => m.Kind != MemberKind.Type && IsCalled(m, name))
            .ToLookup(m => m.FullName);
        string names = string.Join(", ", found.Select(f => f.Key).Order(StringComparer.Ordinal));
        return found.Count switch
        {
            1 => [.. found.First()],
            0 => throw new InvalidDataException(
                $"No member is called '{name}'. Say Type.Member; a constructor is Type.new, an indexer Type.this[]."),
            int many => throw new InvalidDataException($"'{name}' may be {many} members: {names}"),
        };
    }

    private static bool IsCalled(CodeMember member, string name) =>
        name.Contains('.') && $".{member.FullName}".EndsWith($".{name}", StringComparison.Ordinal);
}
