using System.Collections.Concurrent;
using Microsoft.CodeAnalysis;

namespace PlotAgronomy.Map.Model;

/// <summary>Finds the declared member behind the compiler's symbols, and remembers every one it was asked for.</summary>
internal sealed class MemberIndex
{
    private static readonly SymbolDisplayFormat ParameterTypes = SymbolDisplayFormat.MinimallyQualifiedFormat;

    private readonly ConcurrentDictionary<ISymbol, CodeMember?> _bySymbol = new(SymbolEqualityComparer.Default);
    private readonly ConcurrentDictionary<string, CodeMember> _byId = [];

    internal IReadOnlyDictionary<string, CodeMember> Members => _byId;

    /// <summary>The member, or null for what the sources declare none for: locals, namespaces, foreign code.</summary>
    internal CodeMember? Find(ISymbol? symbol)
    {
        if (symbol is null)
        {
            return null;
        }

        return _bySymbol.GetOrAdd(symbol, Enter);
    }

    private CodeMember? Enter(ISymbol symbol) =>
        Declared(symbol) is { } declared && Describe(declared) is { } member ? _byId.GetOrAdd(member.Id, member) : null;

    /// <summary>The symbol as declared: accessors lead to their property, constructed generics to their definition.</summary>
    private static ISymbol? Declared(ISymbol symbol)
    {
        var declared = symbol switch
        {
            IAliasSymbol alias => alias.Target,
            IMethodSymbol { MethodKind: MethodKind.LocalFunction or MethodKind.AnonymousFunction } => null,
            IMethodSymbol { AssociatedSymbol: { } owner } => owner,
            IMethodSymbol method => method.ReducedFrom ?? method,
            ITypeSymbol type => type as INamedTypeSymbol,
            IPropertySymbol or IFieldSymbol or IEventSymbol => symbol,
            _ => null,
        };
        return declared?.OriginalDefinition is { } definition
            && definition.Locations.Any(l => l.IsInSource)
            && !IsNameless(definition)
            ? definition
            : null;
    }

    private static bool IsNameless(ISymbol symbol) =>
        symbol is INamedTypeSymbol { IsTupleType: true } or INamedTypeSymbol { IsAnonymousType: true }
            or INamedTypeSymbol { IsExtension: true }
        || (symbol.ContainingType is { } type && (type.IsTupleType || type.IsAnonymousType));

    private static CodeMember? Describe(ISymbol symbol)
    {
        if (symbol.GetDocumentationCommentId() is not { } id || HomeOf(symbol) is not { } home)
        {
            return null;
        }

        var type = symbol as INamedTypeSymbol ?? OwnerOf(symbol)!;
        return new CodeMember
        {
            Id = id,
            Kind = KindOf(symbol),
            Namespace = type.ContainingNamespace.IsGlobalNamespace ? "" : type.ContainingNamespace.ToDisplayString(),
            Type = NameOf(type),
            Name = symbol is INamedTypeSymbol ? "" : MemberName(symbol),
            Parameters = ParametersOf(symbol),
            File = home.SourceTree!.FilePath,
            Line = home.GetLineSpan().StartLinePosition.Line + 1,
            Reach = ReachOf(symbol),
            IsStatic = symbol.IsStatic,
            IsImplicit = symbol.IsImplicitlyDeclared,
            FulfilsForeign = Contracts.FulfilsForeign(symbol),
        };
    }

    private static Location? HomeOf(ISymbol symbol)
    {
        // What the compiler makes for a type in several files stands in none of them more than in another.
        if (symbol is { IsImplicitlyDeclared: true, ContainingType: { } owner })
        {
            return HomeOf(owner);
        }

        var places = symbol.Locations.Where(l => l.IsInSource).OrderBy(PathOf, StringComparer.Ordinal).ToList();
        return places.Find(l => Path.GetFileNameWithoutExtension(PathOf(l)) == symbol.Name) ?? places.FirstOrDefault();
    }

    private static string PathOf(Location place) => place.SourceTree!.FilePath;

    private static string NameOf(INamedTypeSymbol type) =>
        type.ContainingType is { } outer ? $"{NameOf(outer)}.{type.Name}" : type.Name;

    private static string MemberName(ISymbol symbol) => symbol switch
    {
        IMethodSymbol { MethodKind: MethodKind.Constructor } => "new",
        IPropertySymbol { IsIndexer: true } => "this[]",
        _ => symbol.Name[(symbol.Name.LastIndexOf('.') + 1)..],
    };

    private static string ParametersOf(ISymbol symbol) => symbol switch
    {
        IMethodSymbol method => $"({TypesOf(method.Parameters)})",
        IPropertySymbol { IsIndexer: true } indexer => $"[{TypesOf(indexer.Parameters)}]",
        _ => "",
    };

    private static string TypesOf(IEnumerable<IParameterSymbol> parameters) =>
        string.Join(", ", parameters.Select(p => p.Type.ToDisplayString(ParameterTypes)));

    private static MemberKind KindOf(ISymbol symbol) => symbol switch
    {
        INamedTypeSymbol => MemberKind.Type,
        IMethodSymbol { MethodKind: MethodKind.Constructor or MethodKind.StaticConstructor } => MemberKind.Constructor,
        IMethodSymbol { MethodKind: MethodKind.UserDefinedOperator or MethodKind.Conversion } => MemberKind.Operator,
        IMethodSymbol => MemberKind.Method,
        IPropertySymbol property => property.IsIndexer ? MemberKind.Indexer : MemberKind.Property,
        IFieldSymbol field => field.ContainingType.TypeKind == TypeKind.Enum ? MemberKind.EnumValue : MemberKind.Field,
        _ => MemberKind.Event,
    };

    private static Reach ReachOf(ISymbol symbol)
    {
        var own = symbol.DeclaredAccessibility switch
        {
            Accessibility.Public or Accessibility.Protected or Accessibility.ProtectedOrInternal => Reach.Public,
            Accessibility.Internal or Accessibility.ProtectedAndInternal => Reach.Internal,
            _ => Reach.Private,
        };
        return OwnerOf(symbol) is { } outer && ReachOf(outer) is var around && around < own ? around : own;
    }

    /// <summary>The type around a symbol; a block of extension members has no name and counts as its class.</summary>
    private static INamedTypeSymbol? OwnerOf(ISymbol symbol) =>
        symbol.ContainingType is { IsExtension: true } block ? block.ContainingType : symbol.ContainingType;
}
