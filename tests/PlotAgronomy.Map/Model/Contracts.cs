using Microsoft.CodeAnalysis;

namespace PlotAgronomy.Map.Model;

/// <summary>Which members run in the place of others, by overriding them or by implementing an interface.</summary>
internal static class Contracts
{
    /// <summary>The members that this one overrides or implements, the nearest only.</summary>
    internal static IEnumerable<ISymbol> Fulfilled(ISymbol member)
    {
        ISymbol? overridden = member switch
        {
            IMethodSymbol method => method.OverriddenMethod,
            IPropertySymbol property => property.OverriddenProperty,
            _ => null,
        };
        return overridden is null ? Implemented(member) : Implemented(member).Append(overridden);
    }

    internal static bool FulfilsForeign(ISymbol member) =>
        Fulfilled(member).Any(f => !f.Locations.Any(l => l.IsInSource) || FulfilsForeign(f));

    private static IEnumerable<ISymbol> Implemented(ISymbol member)
    {
        if (member is not (IMethodSymbol { MethodKind: not MethodKind.Constructor } or IPropertySymbol)
            || member.ContainingType is not { } type)
        {
            return [];
        }

        string name = member.Name[(member.Name.LastIndexOf('.') + 1)..];
        return type.AllInterfaces.SelectMany(i => i.GetMembers(name))
            .Where(m => SymbolEqualityComparer.Default.Equals(type.FindImplementationForInterfaceMember(m), member));
    }
}
