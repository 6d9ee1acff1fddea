using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace PlotAgronomy.Map.Model;

/// <summary>What a constructor runs unnamed: the initializers of its type, the plain constructor of the parent.</summary>
internal static class Construction
{
    internal static IEnumerable<ISymbol> RunBy(IMethodSymbol constructor)
    {
        var type = constructor.ContainingType;
        var written = constructor.DeclaringSyntaxReferences.Select(r => r.GetSyntax())
            .OfType<ConstructorDeclarationSyntax>().FirstOrDefault();
        if (written?.Initializer?.ThisOrBaseKeyword.ValueText == "this")
        {
            return [];
        }

        var initialized = type.GetMembers().Where(m => m.IsStatic == constructor.IsStatic && HasInitializer(m));
        return written is { Initializer: not null } || PlainConstructor(type.BaseType) is not { } parent
            ? initialized
            : initialized.Append(parent);
    }

    private static IMethodSymbol? PlainConstructor(INamedTypeSymbol? type) =>
        type?.InstanceConstructors.FirstOrDefault(c => c.Parameters.IsEmpty);

    private static bool HasInitializer(ISymbol member) => member.DeclaringSyntaxReferences.Any(r => r.GetSyntax() switch
    {
        VariableDeclaratorSyntax field => field.Initializer is not null,
        PropertyDeclarationSyntax property => property.Initializer is not null,
        _ => false,
    });
}
